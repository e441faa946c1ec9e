// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Vocabulary.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace lastrivet::evidence {

/// The formats that are taken in.
enum class FileKind {
    Jpeg,
    Png,
    Heic,
    Mp4,
    QuickTime,
    Matroska,
    Avi,
    Pdf,
};

/// How many bytes from the beginning `sniff` looks at.
inline constexpr std::size_t sniffedBytes = 1024;

/// The format by the first bytes of the content: phones and mail programs give wrong suffixes.
std::optional<FileKind> sniff(std::span<const std::uint8_t> beginning);

/// The suffix without dot.
std::string_view suffix(FileKind kind);
MediaKind mediaKind(FileKind kind);
/// True for a suffix, with its dot and in any case, that files of this kind commonly have.
bool fitsKind(FileKind kind, std::string_view dottedSuffix);

} // namespace lastrivet::evidence
