// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/pictures/Pixels.h"

namespace lastrivet::evidence {

/// The picture at another size; `size` is at least 1 × 1.
Pixels resampled(const Pixels &pixels, PixelSize size);

/// The picture turned and mirrored as an Exif orientation (1 to 8) says.
Pixels upright(Pixels pixels, int orientation);

/// True for the orientations that swap width and height.
inline bool turnsSideways(int orientation)
{
    return orientation >= 5;
}

} // namespace lastrivet::evidence
