// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <span>

namespace lastrivet::evidence {

/// What the markers of a JPEG tell (ITU-T T.81, annex B).
struct JpegLayout {
    int width = 0; ///< as stored; 0 when there is no frame
    int height = 0;
    int components = 0;
    /// Decoding needs the whole picture in memory, however small it is wanted.
    bool is_progressive = false;
    /// The end of the image is there.
    bool is_whole = false;
};

JpegLayout layOut(std::span<const std::uint8_t> jpeg);

} // namespace lastrivet::evidence
