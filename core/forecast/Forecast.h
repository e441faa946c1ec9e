// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/PastWork.h"
#include "core/forecast/Range.h"
#include "core/forecast/WorkLeft.h"

#include <cstdint>
#include <optional>

namespace lastrivet::forecast {

struct AssemblyForecast {
    Id<Component> assembly;
    Range<std::int64_t> minutes_to_go{};
    /// How much of the spread of the whole it carries; all of them add up to 1.
    double share_of_spread = 0;
};

struct Forecast {
    Moment as_of;
    std::uint64_t seed = 0;
    WorkLeft work_left;
    /// Of all who work.
    Range<std::int64_t> minutes_to_go{};
    /// Days; none while the pace is not known, with such a pace it never ends, or nothing that is
    /// left has an estimate.
    std::optional<Range<Moment>> finish;
    /// True when work is left and no pace is known: the log is too short, or there was no work
    /// lately, and none was given.
    bool needs_hours_per_week = false;
    /// Over how many weeks, up to the running one, nothing was logged in a log that is long enough;
    /// else 0.
    std::int64_t idle_weeks = 0;
    std::vector<AssemblyForecast> assemblies;
    /// The parts that were left out by choice.
    IdSet<Component> without;
};

struct Options {
    std::uint64_t seed = 1;
    /// At least one.
    std::size_t draws = 10'000;
    /// In place of the log's own pace.
    std::optional<double> hours_per_week;
    WorkChoice choice;
};

/// Hours and finish as ranges, by drawing many possible futures (see `Futures`). The pace is that
/// of the last 26 weeks, of which there must be eight. The same seed gives the same answer.
Forecast forecast(const Records &records, Moment asOf, const Options &options = {});
/// The same where `past`, the work of these records until `asOf`, is known already.
Forecast forecast(const Records &records, const PastWork &past, Moment asOf,
                  const Options &options);

/// The weeks that can come, in minutes: the log's last ones, or the hours that were given in place
/// of them; empty when neither is enough.
std::vector<double> weeksFor(const PastWork &past, const Options &options);

} // namespace lastrivet::forecast
