// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/pictures/Pixels.h"

#include <cstdint>
#include <span>
#include <string>

namespace lastrivet::evidence {

/// The picture as a JPEG file with 4:2:0 colours; `quality` 1 to 100; `profile` is an ICC profile
/// or empty.
std::string writeJpeg(const Pixels &pixels, int quality, std::span<const std::uint8_t> profile);

} // namespace lastrivet::evidence
