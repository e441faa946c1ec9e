// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"

#include <optional>
#include <string_view>

namespace lastrivet::evidence {

/// Reads `YYYY:MM:DD HH:MM:SS` (Exif 2.32, DateTimeOriginal); seconds are dropped. Empty for blank,
/// zero or impossible times.
std::optional<Moment> parseExifTime(std::string_view text);

/// Reads `+HH:MM` or `-HH:MM` (Exif 2.32, OffsetTimeOriginal) as minutes east of UTC.
std::optional<int> parseExifOffset(std::string_view text);

} // namespace lastrivet::evidence
