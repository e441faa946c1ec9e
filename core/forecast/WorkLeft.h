// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

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

/// What is to be done yet.
struct WorkLeft {
    std::vector<AssemblyWork> assemblies;
    std::int64_t steps = 0;
    std::int64_t squawks = 0;
    /// Steps whose estimate was guessed from finished ones.
    std::int64_t guessed_estimates = 0;
    /// Squawks that nobody estimated: they are in no sum.
    std::int64_t squawks_without_estimate = 0;
    /// Steps left out by choice.
    std::int64_t excluded_steps = 0;
};

/// Steps neither done nor dropped at `asOf`, and squawks not fixed or accepted, without those at or
/// below the parts `without`. A step without an estimate takes the median of what finished steps on
/// parts of its kind took, else of all finished steps, else the median of all estimates, else two
/// hours (a chosen value, ours).
WorkLeft workLeft(const Records &records, Moment asOf, const IdSet<Component> &without);

} // namespace lastrivet::forecast
