// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/forecast/PastWork.h"
#include "core/forecast/WorkLeft.h"

#include <cstdint>
#include <optional>

namespace lastrivet::forecast {

/// Four points of a distribution.
template <class Value> struct Range {
    Value p10{};
    Value p50{};
    Value p80{};
    Value p90{};

    friend bool operator==(const Range &, const Range &) = default;
};

/// What is known of ln(actual / estimate) after some steps were finished: a normal distribution of
/// unknown mean and variance, with a normal-inverse-gamma prior (Gelman et al., Bayesian Data
/// Analysis, section 3.3). The prior's four values are chosen, ours.
struct Posterior {
    double mean = 0.2;
    double weight = 2;
    double shape = 2;
    double scale = 0.25;
};

Posterior posteriorOf(const std::vector<double> &logRatios);

struct AssemblyForecast {
    Id<Component> assembly;
    Range<std::int64_t> minutes_to_go;
    /// How much of the spread of the whole it carries; all of them add up to 1.
    double share_of_spread = 0;
};

struct Forecast {
    Moment as_of;
    std::uint64_t seed = 0;
    WorkLeft work_left;
    Range<std::int64_t> minutes_to_go;
    /// Days; none while the pace is not known, or with such a pace it never ends.
    std::optional<Range<Moment>> finish;
    /// True when the log is too short to tell a pace, and none was given.
    bool needs_hours_per_week = false;
    std::vector<AssemblyForecast> assemblies;
};

struct Options {
    std::uint64_t seed = 1;
    std::size_t draws = 10'000;
    /// In place of the log's own pace.
    std::optional<double> hours_per_week;
    /// Parts that are left out by choice, with everything below.
    IdSet<Component> without;
};

/// Hours and finish as ranges, by drawing many possible futures.
///
/// In each, how slow the builder is and how much that varies are drawn once and hold for all steps.
/// Rework comes on top, drawn around what the log shows, drawn towards 8 % as if that had been seen
/// over 100 hours (chosen values, ours). The pace is that of the last 26 weeks, drawn in blocks of
/// four. The same seed gives the same answer.
Forecast forecast(const Records &records, Moment asOf, const Options &options = {});

} // namespace lastrivet::forecast
