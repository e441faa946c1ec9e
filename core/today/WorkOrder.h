// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"

#include <cstddef>
#include <tuple>
#include <unordered_map>
#include <vector>

namespace lastrivet::today {

/// The order in which blockers can be cleared: what must be before advice, and of each work that
/// can be done now before work that must wait, before somebody's word.
class WorkOrder {
public:
    explicit WorkOrder(const readiness::Answer &answer);

    std::vector<const readiness::Blocker *>
    nearestFirst(const readiness::ClosingAnswer &closing) const;
    /// The must blocker to begin with; null when there is none.
    const readiness::Blocker *nearest(const readiness::ClosingAnswer &closing) const;

private:
    using Rank = std::tuple<readiness::Weight, int, std::size_t>;

    Rank rank(const readiness::Blocker &blocker) const;

    /// The place of each step that can be worked on among them.
    std::unordered_map<Id<Step>, std::size_t> m_places;
};

} // namespace lastrivet::today
