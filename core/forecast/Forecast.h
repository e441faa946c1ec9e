// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/PastWork.h"
#include "core/forecast/Range.h"
#include "core/forecast/WorkLeft.h"

#include <cstdint>
#include <optional>

namespace lastrivet::forecast {

/// The hours to go of one assembly.
struct AssemblyForecast {
    Id<Component> assembly;
    Range<std::int64_t> minutes_to_go{};
    /// How much of the spread of the whole it carries; all of them add up to 1.
    double share_of_spread = 0;
};

/// The hours and the time to go, as ranges.
struct Forecast {
    Moment as_of;
    std::uint64_t seed = 0;
    WorkLeft work_left;
    /// Man-minutes, of all who work.
    Range<std::int64_t> minutes_to_go{};
    /// Days; none while the pace is not known, when the work would never end at that pace, or when
    /// nothing that is left has an estimate.
    std::optional<Range<Moment>> finish;
    /// True when work is left and no pace is known: the log is too short, or there was no work
    /// lately, and none was given.
    bool needs_hours_per_week = false;
    /// The number of weeks looked at, when the log is long enough and there was no work in any;
    /// else 0.
    std::int64_t idle_weeks = 0;
    std::vector<AssemblyForecast> assemblies;
    /// The parts that were left out by choice.
    IdSet<Component> without;
};

struct Options {
    std::uint64_t seed = 1;
    /// How many futures are drawn; at least one.
    std::size_t draws = 10'000;
    /// In place of the log's own pace.
    std::optional<double> hours_per_week;
    WorkChoice choice;
};

/// Hours and finish as ranges, by drawing many possible futures (see `Futures`). The pace is that
/// of the last 26 weeks; the log must reach back at least eight. The same seed gives the same
/// answer.
Forecast forecast(const Records &records, Moment asOf, const Options &options = {});
/// The same where `past`, the work of these records until `asOf`, is known already.
Forecast forecast(const Records &records, const PastWork &past, Moment asOf,
                  const Options &options);

/// The weeks that futures are drawn from, in minutes of work: the log's last ones, or the given
/// hours a week in place of them; empty when no pace is known.
std::vector<double> weeksFor(const PastWork &past, const Options &options);

} // namespace lastrivet::forecast
