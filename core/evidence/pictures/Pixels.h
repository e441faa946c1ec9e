// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/files/Bytes.h"

#include <cstddef>

namespace lastrivet::evidence {

/// A decoded picture: rows from the top, three bytes a pixel (red, green, blue), no padding.
struct Pixels {
    Pixels(int aWidth, int aHeight)
        : width(aWidth)
        , height(aHeight)
        , rgb(std::size_t(aWidth) * std::size_t(aHeight) * 3)
    {
    }

    int width;
    int height;
    Bytes rgb;
};

/// Width and height in pixels.
struct PixelSize {
    int width = 0;
    int height = 0;

    friend bool operator==(PixelSize, PixelSize) = default;
};

/// The size with its longest edge brought down to `edge`; a smaller one stays as it is.
PixelSize fitted(PixelSize size, int edge);

} // namespace lastrivet::evidence
