// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hours/Estimates.h"

#include "core/hours/Hours.h"

#include <map>

namespace lastrivet::hours {

namespace {

using PartSums = std::map<Id<Component>, PartEstimate>;

/// Adds a step to its part and to all parts around that.
void addAbove(PartSums &parts, const Records &records, Id<Component> id, const StepEstimate &step)
{
    const Component *part = records.findLive(id);
    // Ends after as many parts as there are, in case damaged records contain a cycle of parents.
    for (std::size_t left = records.components.size(); part && left > 0; --left) {
        PartEstimate &sum =
            parts.try_emplace(part->id, PartEstimate{part->id, 0, {}, {}}).first->second;
        ++sum.steps;
        sum.estimate += step.estimate;
        sum.actual += step.actual;
        part = records.findLive(part->parent_id);
    }
}

} // namespace

bool counts(const WorkSession &session, Moment asOf)
{
    return !session.withdrawn_on && happened(session.began, asOf);
}

std::vector<std::pair<Id<Step>, Minutes>> minutesByStep(const Records &records, Moment asOf)
{
    std::map<Id<Step>, Minutes> sums;
    for (const WorkSession &session : records.work_sessions) {
        if (session.step_id && counts(session, asOf))
            sums[session.step_id] += workerMinutes(session);
    }
    return {sums.begin(), sums.end()};
}

Estimates estimates(const Records &records, Moment asOf)
{
    const auto worked = minutesByStep(records, asOf);
    auto next = worked.begin();
    Estimates told;
    PartSums parts;
    for (const Step &step : records.steps) {
        while (next != worked.end() && next->first < step.id)
            ++next;
        if (step.withdrawn_on || !happened(step.done_on, asOf))
            continue;
        const bool isWorked =
            next != worked.end() && next->first == step.id && next->second > Minutes{0};
        const bool isEstimated = step.estimate_minutes && *step.estimate_minutes > Minutes{0};
        told.without_hours += !isWorked;
        told.without_estimate += isWorked && !isEstimated;
        if (!isWorked || !isEstimated)
            continue;
        told.steps.push_back({step.id, *step.estimate_minutes, next->second});
        told.estimate += told.steps.back().estimate;
        told.actual += told.steps.back().actual;
        addAbove(parts, records, step.component_id, told.steps.back());
    }
    for (const auto &[id, sum] : parts)
        told.parts.push_back(sum);
    return told;
}

} // namespace lastrivet::hours
