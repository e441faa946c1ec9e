// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/PartTree.h"

#include "core/base/NearSearch.h"

#include <algorithm>
#include <unordered_map>

namespace lastrivet::readiness {

namespace {

using Children = std::unordered_map<std::int64_t, std::vector<const Component *>>;

constexpr std::int64_t rootKey = 0;

/// Live parts by the id of their parent; those without a live parent are roots.
Children childrenOf(const Table<Component> &components)
{
    Children children;
    for (const Component &part : components) {
        if (part.withdrawn_on)
            continue;
        const Component *parent = part.parent_id ? components.find(part.parent_id) : nullptr;
        const bool isRoot = !parent || parent->withdrawn_on;
        children[isRoot ? rootKey : parent->id.value()].push_back(&part);
    }
    return children;
}

} // namespace

PartTree::PartTree(const Table<Component> &components)
{
    struct Visit {
        const Component *part;
        std::optional<Place> parent;
    };
    constexpr Place open = 0;
    const Children children = childrenOf(components);
    m_places.reserve(components.size());
    std::vector<Visit> waiting;
    const auto pushChildren = [&](std::int64_t key, std::optional<Place> parent) {
        const auto found = children.find(key);
        if (found == children.end())
            return;
        for (auto child = found->second.rbegin(); child != found->second.rend(); ++child)
            waiting.push_back({*child, parent});
    };
    pushChildren(rootKey, std::nullopt);
    while (!waiting.empty()) {
        const Visit visit = waiting.back();
        waiting.pop_back();
        const Place place = size();
        m_parts.push_back(visit.part);
        m_parents.push_back(visit.parent);
        m_ends.push_back(open);
        m_places.emplace_back(visit.part->id.value(), place);
        pushChildren(visit.part->id.value(), place);
    }
    std::sort(m_places.begin(), m_places.end());
    for (Place place = size(); place-- > 0;) {
        m_ends[place] = std::max(m_ends[place], place + 1);
        if (const auto parent = m_parents[place])
            m_ends[*parent] = std::max(m_ends[*parent], m_ends[place]);
    }
}

std::optional<Place> PartTree::placeOf(Id<Component> id) const
{
    const auto found = firstNotBelow(m_places.size(), id.value(),
                                     [this](std::size_t i) { return m_places[i].first; });
    if (found == m_places.size() || m_places[found].first != id.value())
        return std::nullopt;
    return m_places[found].second;
}

std::optional<Place> PartTree::parentOf(Place place) const
{
    return m_parents[place];
}

std::vector<Stretch> PartTree::subtrees(const IdSet<Component> &ids) const
{
    std::vector<Stretch> stretches;
    for (const auto id : ids) {
        if (const auto place = placeOf(id))
            stretches.push_back(subtree(*place));
    }
    std::sort(stretches.begin(), stretches.end(),
              [](const Stretch &a, const Stretch &b) { return a.begin < b.begin; });
    std::vector<Stretch> disjoint;
    for (const Stretch &stretch : stretches) {
        if (disjoint.empty() || stretch.begin >= disjoint.back().end)
            disjoint.push_back(stretch);
    }
    return disjoint;
}

std::vector<Place> PartTree::above(const IdSet<Component> &ids) const
{
    std::vector<Place> places;
    for (const auto id : ids) {
        const auto place = placeOf(id);
        for (auto next = place ? parentOf(*place) : std::nullopt; next; next = parentOf(*next))
            places.push_back(*next);
    }
    std::sort(places.begin(), places.end());
    places.erase(std::unique(places.begin(), places.end()), places.end());
    return places;
}

bool holds(const std::vector<Stretch> &stretches, Place place)
{
    const auto next =
        std::partition_point(stretches.begin(), stretches.end(),
                             [place](const Stretch &stretch) { return stretch.end <= place; });
    return next != stretches.end() && next->begin <= place;
}

} // namespace lastrivet::readiness
