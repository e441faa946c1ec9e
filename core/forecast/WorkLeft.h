// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <functional>
#include <vector>

namespace lastrivet::forecast {

/// The work left of one top part and everything below it; with an empty id, of no part.
struct AssemblyWork {
    Id<Component> assembly;
    /// Estimates of steps, in minutes.
    std::vector<double> steps;
    /// Estimates of squawks together, in minutes.
    double squawks = 0;
};

/// What stands in for the estimate of a step that has none: what finished steps took, else the
/// median of all estimates, else two hours.
enum class StandIn { FinishedSteps, Estimates, TwoHours };

/// The work that is left to do.
struct WorkLeft {
    std::vector<AssemblyWork> assemblies;
    std::int64_t steps = 0;
    std::int64_t squawks = 0;
    /// Steps whose estimate was guessed, and from what.
    std::int64_t guessed_estimates = 0;
    StandIn stand_in = StandIn::FinishedSteps;
    /// Squawks without an estimate; they are in no sum.
    std::int64_t squawks_without_estimate = 0;
    /// Left out by choice; in none of the other numbers.
    std::int64_t excluded_steps = 0;
    std::int64_t excluded_squawks = 0;

    bool isNothing() const { return steps == 0 && squawks == 0; }
};

/// Which part of the work is looked at; all of it where nothing is set.
struct WorkChoice {
    /// Parts that are left out by choice, with everything below.
    IdSet<Component> without;
    std::function<bool(const Step &)> takes_step{};
    std::function<bool(const Squawk &)> takes_squawk{};
};

/// Steps neither done nor dropped at `asOf`, and squawks not fixed or accepted. A step without an
/// estimate takes the median of what finished steps on parts of its kind took, else of all finished
/// steps, else the median of all estimates, else two hours (a chosen value, ours).
WorkLeft workLeft(const Records &records, Moment asOf, const WorkChoice &choice);

/// True when a part or one around it is left out by choice.
bool isLeftOut(const Records &records, Id<Component> part, const IdSet<Component> &without);

} // namespace lastrivet::forecast
