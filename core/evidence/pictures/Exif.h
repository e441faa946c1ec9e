// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace lastrivet::evidence {

/// What a camera wrote into a picture.
struct Exif {
    /// DateTimeOriginal: what the camera's clock said.
    std::optional<Moment> taken;
    /// OffsetTimeOriginal, minutes east of UTC; empty when the camera did not tell.
    std::optional<int> offset_minutes;
    /// 1 to 8, how the stored picture is to be turned (Exif 2.32, Orientation); 1 is upright.
    int orientation = 1;
    std::vector<std::uint8_t> colour_profile;
};

/// Unreadable or missing parts stay at their defaults. Any thread.
Exif readExif(std::span<const std::uint8_t> picture);

/// When the picture was taken, in the zone: a time without offset is taken as it is.
std::optional<Moment> takenOn(const Exif &exif, std::string_view zone);

} // namespace lastrivet::evidence
