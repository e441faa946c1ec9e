// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/PartOrder.h"

#include "core/records/PartPlace.h"

#include <algorithm>
#include <map>

namespace lastrivet::packet {

namespace {

bool comesBefore(const Component *a, const Component *b)
{
    return partPlace(*a) < partPlace(*b);
}

} // namespace

std::vector<PartInOrder> partsInOrder(const Records &records)
{
    std::map<Id<Component>, std::vector<const Component *>> children;
    for (const Component &part : records.components) {
        if (!part.withdrawn_on)
            children[part.parent_id].push_back(&part);
    }
    std::vector<PartInOrder> order;
    std::vector<PartInOrder> open{{nullptr, -1}};
    while (!open.empty()) {
        const PartInOrder next = open.back();
        open.pop_back();
        if (next.part)
            order.push_back(next);
        const auto below = children.find(next.part ? next.part->id : Id<Component>{});
        if (below == children.end())
            continue;
        std::sort(below->second.begin(), below->second.end(), comesBefore);
        for (auto part = below->second.rbegin(); part != below->second.rend(); ++part)
            open.push_back({*part, next.depth + 1});
    }
    return order;
}

} // namespace lastrivet::packet
