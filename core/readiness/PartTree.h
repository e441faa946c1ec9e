// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/records/Component.h"
#include "core/records/Table.h"

#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

namespace lastrivet::readiness {

/// A place in the tree of parts: parts are numbered depth first, so that everything below a part
/// comes right behind it.
using Place = std::uint32_t;

/// Places from `begin` up to, not including, `end`.
struct Stretch {
    Place begin;
    Place end;
};

/// The tree of the live parts, for quick answers about what lies below what.
class PartTree {
public:
    explicit PartTree(const Table<Component> &components);

    Place size() const { return Place(m_parts.size()); }
    /// Empty for parts that are withdrawn or not there.
    std::optional<Place> placeOf(Id<Component> id) const;
    const Component &part(Place place) const { return *m_parts[place]; }
    std::optional<Place> parentOf(Place place) const;
    /// The part and all below it.
    Stretch subtree(Place place) const { return {place, m_ends[place]}; }
    Stretch everything() const { return {0, size()}; }
    /// The union of the subtrees, as disjoint stretches in rising order.
    std::vector<Stretch> subtrees(const IdSet<Component> &ids) const;
    /// The proper ancestors of the parts, in rising order.
    std::vector<Place> above(const IdSet<Component> &ids) const;

private:
    std::vector<const Component *> m_parts;
    std::vector<Place> m_ends;
    std::vector<std::optional<Place>> m_parents;
    /// By rising id.
    std::vector<std::pair<std::int64_t, Place>> m_places;
};

/// True when one of the rising, disjoint stretches holds the place.
bool holds(const std::vector<Stretch> &stretches, Place place);

} // namespace lastrivet::readiness
