// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace lastrivet::stores {

/// How many days ahead the stores and the first page announce expiry and calibration.
inline constexpr std::int64_t soonDays = 30;

} // namespace lastrivet::stores
