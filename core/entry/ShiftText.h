// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace lastrivet::entry {

/// By how much a wrong clock is set right, in minutes: what `readMinutes` reads, with a sign or
/// none, and days, with hours behind them or none, `-6h`, `+1h30`, `2 days`, `3 Tage`, `1d 2h`.
/// Empty for anything else.
std::optional<std::int64_t> readShift(std::string_view text);

} // namespace lastrivet::entry
