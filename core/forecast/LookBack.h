// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/Forecast.h"

#include <vector>

namespace lastrivet::forecast {

/// What the forecast said on a day in the past, and what came of it.
struct Look {
    Moment day;
    std::int64_t steps_left = 0;
    std::int64_t minutes_so_far = 0;
    /// Of all that was left.
    Range<std::int64_t> minutes_to_go{};
    std::optional<Range<Moment>> finish;
    /// How many steps that were left then are done by now; what was said of them and of the squawks
    /// fixed since, and what these took after that day, rework included.
    std::int64_t steps_since = 0;
    Range<std::int64_t> said{};
    std::int64_t came = 0;
};

/// How good the forecast was.
struct LookBack {
    /// One for the first day of each month, oldest first, since the log was long enough to tell a
    /// pace.
    std::vector<Look> looks;
    /// Of the looks with steps done since: how many, and in how many no more came than P50, P80
    /// said.
    std::int64_t with_outcome = 0;
    std::int64_t within_p50 = 0;
    std::int64_t within_p80 = 0;
    /// When the last step was done; none while steps are left.
    std::optional<Moment> finished_on;
};

/// The usual number of futures for each month; enough for P10 to P90.
inline constexpr std::size_t drawsLookingBack = 2000;

/// Asks the forecast again for the first day of each month before `asOf`, with what was on record
/// then: log entries, squawks and finished steps by their days, steps by when they were written
/// down. A step that came by import, or was written down after it was done, counts from the
/// beginning. Estimates are those of today, the pace is the log's. `options.draws` are drawn for
/// each month.
LookBack lookBack(const Records &records, Moment asOf, const Options &options = {});

} // namespace lastrivet::forecast
