// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <optional>

namespace lastrivet::print {

/// What a document must know of a JPEG file to embed its bytes unchanged.
struct JpegHeader {
    int width = 0;
    int height = 0;
    /// 1 grey, 3 colour, 4 as for printing presses.
    int components = 0;
};

/// Reads the start of frame; empty when the file is no JPEG of 8 bits, or is cut short.
std::optional<JpegHeader> readJpegHeader(const std::filesystem::path &file);

} // namespace lastrivet::print
