// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/steps/StepOrder.h"

#include <algorithm>
#include <tuple>
#include <unordered_map>
#include <unordered_set>

namespace lastrivet::steps {

std::vector<Id<Step>> stepsOf(const Records &records, Id<Component> part)
{
    std::vector<std::tuple<std::int64_t, Id<Step>>> found;
    for (const Step &step : records.steps) {
        if (step.component_id == part && !step.withdrawn_on)
            found.emplace_back(step.position.value_or(largestId), step.id);
    }
    std::ranges::sort(found);
    std::vector<Id<Step>> ids;
    for (const auto &[position, id] : found)
        ids.push_back(id);
    return ids;
}

IdSet<Step> stepsBefore(const Records &records, const Step &step)
{
    IdSet<Step> found;
    IdSet<Step> open = step.after;
    std::unordered_set<Id<Step>> seen;
    while (!open.empty()) {
        const Step *earlier = records.find(open.back());
        open.pop_back();
        if (!earlier || !seen.insert(earlier->id).second)
            continue;
        if (earlier->withdrawn_on)
            open.insert(open.end(), earlier->after.begin(), earlier->after.end());
        else
            found.push_back(earlier->id);
    }
    std::ranges::sort(found);
    return found;
}

IdSet<Step> withNeighbours(const Records &records, const std::vector<Id<Step>> &steps)
{
    const std::unordered_set<Id<Step>> own(steps.begin(), steps.end());
    std::unordered_set<Id<Step>> all = own;
    for (const Step &step : records.steps) {
        if (step.withdrawn_on)
            continue;
        const bool isOwn = own.contains(step.id);
        for (const Id<Step> earlier : stepsBefore(records, step)) {
            if (isOwn)
                all.insert(earlier);
            else if (own.contains(earlier))
                all.insert(step.id);
        }
    }
    IdSet<Step> sorted(all.begin(), all.end());
    std::ranges::sort(sorted);
    return sorted;
}

std::vector<Id<Step>> wayFrom(const Records &records, Id<Step> step, Id<Step> before)
{
    // From `before` back through what comes before it; each step knows the one it was found from.
    std::unordered_map<Id<Step>, Id<Step>> next{{before, {}}};
    std::vector<Id<Step>> open{before};
    while (!open.empty() && !next.contains(step)) {
        const Step *later = records.find(open.back());
        open.pop_back();
        if (!later)
            continue;
        for (const Id<Step> earlier : stepsBefore(records, *later)) {
            if (next.emplace(earlier, later->id).second)
                open.push_back(earlier);
        }
    }
    std::vector<Id<Step>> way;
    for (auto at = next.find(step); at != next.end(); at = next.find(at->second))
        way.push_back(at->first);
    return way;
}

} // namespace lastrivet::steps
