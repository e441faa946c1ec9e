// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/evidence/FileKind.h"
#include "core/evidence/pictures/Pixels.h"

#include <cstdint>
#include <span>
#include <string>

namespace lastrivet::evidence {

/// A picture file in memory, with the name that sentences give it.
struct PictureFile {
    std::span<const std::uint8_t> bytes;
    FileKind kind = FileKind::Jpeg;
    std::string name;
};

/// The most pixels of a picture that is decoded as a whole: 192 MB as RGB.
inline constexpr std::int64_t largestWhole = 64'000'000;
/// The most pixels of a JPEG that is decoded row by row at a reduced size.
inline constexpr std::int64_t largestScaled = 500'000'000;
/// The longest file that is read as a picture.
inline constexpr std::uint64_t longestPictureFile = 256u << 20;

/// The size as stored, from the headers; or why the file is no picture that can be shown: no frame,
/// too many pixels, cut short.
Result<PixelSize, Message> readSize(const PictureFile &file);

/// The picture as stored (not turned), at least `edge` pixels long where it has that many and
/// possibly longer; or why it cannot be decoded. Memory stays within a few bytes per decoded pixel.
Result<Pixels, Message> decode(const PictureFile &file, int edge);

} // namespace lastrivet::evidence
