// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/today/WorkOrder.h"

#include <algorithm>

namespace lastrivet::today {

using namespace readiness;

namespace {

/// The place of a blocker in the order in which work is done; lower comes first.
int turn(const Blocker &blocker, bool isWorkable)
{
    if (blocker.waits_for)
        return 6;
    switch (blocker.rule) {
    case Rule::UndoneStep:
        return isWorkable ? 0 : 4;
    case Rule::OpenSquawk:
        return 1;
    case Rule::UndecidedDeviation:
    case Rule::RejectedDeviationBuilt:
    case Rule::OpenBulletin:
        return 3;
    case Rule::InnerClosingOpen:
    case Rule::InnerClosedEarly:
        return 5;
    case Rule::UnsignedHoldPoint:
    case Rule::OutdatedSignOff:
        return 7;
    default:
        return 2;
    }
}

} // namespace

WorkOrder::WorkOrder(const Answer &answer)
{
    m_places.reserve(answer.workable.size());
    for (std::size_t i = 0; i < answer.workable.size(); ++i)
        m_places.emplace(answer.workable[i], i);
}

WorkOrder::Rank WorkOrder::rank(const Blocker &blocker) const
{
    const auto place = blocker.rule == Rule::UndoneStep ? m_places.find(Id<Step>{blocker.record.id})
                                                        : m_places.end();
    const bool isWorkable = place != m_places.end();
    return {blocker.weight, turn(blocker, isWorkable),
            isWorkable ? place->second : m_places.size()};
}

std::vector<const Blocker *> WorkOrder::nearestFirst(const ClosingAnswer &closing) const
{
    std::vector<const Blocker *> blockers;
    for (const Blocker &blocker : closing.blockers)
        blockers.push_back(&blocker);
    std::ranges::stable_sort(blockers, {},
                             [this](const Blocker *blocker) { return rank(*blocker); });
    return blockers;
}

const Blocker *WorkOrder::nearest(const ClosingAnswer &closing) const
{
    const auto nearest = std::ranges::min_element(
        closing.blockers, {}, [this](const Blocker &blocker) { return rank(blocker); });
    return nearest == closing.blockers.end() || nearest->weight != Weight::Must ? nullptr
                                                                                : &*nearest;
}

} // namespace lastrivet::today
