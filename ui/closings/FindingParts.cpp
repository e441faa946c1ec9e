// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/FindingParts.h"

#include <algorithm>
#include <set>

namespace lastrivet::ui {

namespace {

constexpr std::size_t mostParts = 200;

} // namespace

std::vector<Id<Component>> partsWithin(const Records &records, const readiness::Answer &answer,
                                       const IdSet<Closing> &closings)
{
    std::vector<Id<Component>> parts;
    std::set<Id<Component>> known;
    const auto add = [&](Id<Component> part) {
        if (part && known.insert(part).second)
            parts.push_back(part);
    };
    // What is filed on a part that a closing is on and does not hide would not keep it open.
    for (const auto id : closings) {
        const Closing *closing = records.find(id);
        const auto *reached = answer.closing(id);
        if (!closing)
            continue;
        if (reached && std::ranges::binary_search(reached->reach, closing->component_id))
            add(closing->component_id);
        for (const auto part : closing->encloses)
            add(part);
    }
    for (const auto id : closings) {
        const auto *closing = answer.closing(id);
        for (const auto part : closing ? closing->reach : IdSet<Component>{})
            add(part);
    }
    for (const auto id : closings) {
        if (const Closing *closing = records.find(id))
            add(closing->component_id);
    }
    if (!parts.empty() && parts.size() < mostParts)
        return parts;
    for (const Component &part : records.components) {
        if (!part.withdrawn_on)
            add(part.id);
    }
    return parts;
}

} // namespace lastrivet::ui
