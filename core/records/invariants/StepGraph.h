// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace lastrivet::invariants {

/// Which step comes after which. Withdrawn steps stay in it, since their predecessors stand in for
/// them.
class StepGraph {
public:
    using Index = std::size_t;

    explicit StepGraph(const Table<Step> &steps);

    std::size_t size() const { return m_steps.size(); }
    const Step &step(Index index) const { return *m_steps[index]; }
    /// The steps that come directly before one.
    const std::vector<Index> &before(Index index) const { return m_before[index]; }
    /// Every step that comes after one of `starts`, directly or not, in ascending order.
    std::vector<Index> allAfter(const std::vector<Index> &starts) const;
    /// Steps that come after themselves, one list per cycle found; each step follows the next.
    std::vector<std::vector<Index>> cycles() const;

private:
    std::optional<Index> indexOf(Id<Step> id) const;

    std::vector<const Step *> m_steps;
    std::vector<std::vector<Index>> m_before;
    std::vector<std::vector<Index>> m_after;
};

} // namespace lastrivet::invariants
