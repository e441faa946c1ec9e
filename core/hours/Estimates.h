// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Minutes.h"
#include "core/records/Records.h"

#include <cstdint>
#include <utility>
#include <vector>

namespace lastrivet::hours {

/// The estimate of a finished step, and the man-minutes that it took.
struct StepEstimate {
    Id<Step> step;
    Minutes estimate;
    Minutes actual;

    friend bool operator==(const StepEstimate &, const StepEstimate &) = default;
};

/// The same for all such steps of a part and of everything below it.
struct PartEstimate {
    Id<Component> part;
    std::int64_t steps = 0;
    Minutes estimate;
    Minutes actual;

    friend bool operator==(const PartEstimate &, const PartEstimate &) = default;
};

/// Estimates beside what the work really took.
struct Estimates {
    /// Finished steps that have both an estimate and time in the log, by id.
    std::vector<StepEstimate> steps;
    /// Parts with such a step at or below them, by id.
    std::vector<PartEstimate> parts;
    Minutes estimate;
    Minutes actual;
    /// Finished, with time in the log, and never estimated.
    std::int64_t without_estimate = 0;
    /// Finished, and the log has no time for them.
    std::int64_t without_hours = 0;
};

Estimates estimates(const Records &records, Moment asOf);

/// What all who worked on a step took, by step, of log entries that began by `asOf`.
std::vector<std::pair<Id<Step>, Minutes>> minutesByStep(const Records &records, Moment asOf);

/// True for live log entries that began by `asOf`.
bool counts(const WorkSession &session, Moment asOf);

} // namespace lastrivet::hours
