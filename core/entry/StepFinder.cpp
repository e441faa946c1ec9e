// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/StepFinder.h"

#include "core/base/CaseFold.h"

#include <algorithm>

namespace lastrivet::entry {

std::string stepMark(const Records &records, const Step &step)
{
    const Component *part = records.find(step.component_id);
    if (!part || part->code.empty() || !step.position)
        return {};
    return part->code + "." + std::to_string(*step.position);
}

std::vector<Id<Step>> stepsMeant(const Records &records, const std::string &word,
                                 const std::vector<Id<Component>> &parts)
{
    std::vector<Id<Step>> found;
    for (const Step &step : records.steps) {
        if (step.withdrawn_on)
            continue;
        const bool isOnPart = std::ranges::find(parts, step.component_id) != parts.end();
        if (folded(stepMark(records, step)) == word || folded(step.plan_ref) == word ||
            (isOnPart && step.position && std::to_string(*step.position) == word))
            found.push_back(step.id);
    }
    return found;
}

} // namespace lastrivet::entry
