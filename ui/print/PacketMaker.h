// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Packet.h"
#include "ui/print/Document.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet::print {

/// The forms in which a packet leaves the program.
enum class PacketForm {
    Pdf,
    /// A folder with the PDF, the photographs in full size, and `SHA256SUMS`.
    Folder,
    /// A PDF that mail takes, with smaller and, where that is not enough, fewer pictures.
    Small,
};

/// The small form stays under this. Mail services of many kinds take 20 to 25 MB with the third
/// that mailing adds, and some 20 MB in all.
inline constexpr std::uint64_t mostBytesToSend = 15'000'000;

/// A packet that is to be made.
struct PacketOrder {
    packet::Packet packet;
    Imprint imprint;
    Choices choices;
    PacketForm form = PacketForm::Pdf;
    /// The PDF, or the folder.
    std::filesystem::path place;
    /// What the small form stays under.
    std::uint64_t most_bytes = mostBytesToSend;
};

struct PacketMade {
    Printed printed;
    /// Of the PDF.
    std::uint64_t bytes = 0;
    /// Of the small form: 0 where the pictures are as they were.
    int longest_edge = 0;
    int left_out = 0;
    /// Of the folder: photographs in full size, files that are not there, and files that are no
    /// longer what was taken in.
    int full_size = 0;
    std::vector<std::string> missing;
    std::vector<std::string> altered;
};

/// Makes a packet in its form, whole or not at all; nothing when the person cancelled. The
/// originals of its photographs lie in `projectFolder`. Needs a QGuiApplication; any thread. Throws
/// `Fault`s that say in one sentence what happened.
std::optional<PacketMade> makePacket(const PacketOrder &order, const Records &records,
                                     const std::filesystem::path &projectFolder,
                                     const Pictures &pictures, const OnPercent &onPercent = {});

} // namespace lastrivet::print
