// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace lastrivet::stores {

/// How many days ahead expiry and calibration are announced, in the stores and on the first page.
inline constexpr std::int64_t soonDays = 30;

} // namespace lastrivet::stores
