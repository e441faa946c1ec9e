// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Lists.h"

#include <algorithm>

namespace lastrivet::readiness {

namespace {

/// Higher is worse.
int badness(State state)
{
    switch (state) {
    case State::Closed:
        return 0;
    case State::Clear:
        return 1;
    case State::ReadyToSign:
        return 2;
    case State::ReadyToInspect:
        return 3;
    case State::Hold:
        return 4;
    case State::ClosedEarly:
        return 5;
    }
    return 0;
}

} // namespace

std::vector<Badge> badges(const Ground &ground, const Answer &answer)
{
    std::vector<std::optional<State>> worst(ground.tree.size());
    const auto worsen = [&](Place place, State state) {
        if (!worst[place] || badness(state) > badness(*worst[place]))
            worst[place] = state;
    };
    for (std::size_t i = 0; i < answer.closings.size(); ++i) {
        if (const auto place = ground.tree.placeOf(ground.closings[i].closing->component_id))
            worsen(*place, answer.closings[i].state);
    }
    // Parts follow their parents: going backwards, every part is complete before its state is
    // passed to its parent.
    for (Place place = ground.tree.size(); place-- > 0;) {
        const auto parent = ground.tree.parentOf(place);
        if (parent && worst[place])
            worsen(*parent, *worst[place]);
    }
    std::vector<Badge> list;
    for (Place place = 0; place < ground.tree.size(); ++place) {
        if (worst[place])
            list.push_back({ground.tree.part(place).id, *worst[place]});
    }
    std::sort(list.begin(), list.end(), [](const Badge &a, const Badge &b) { return a.id < b.id; });
    return list;
}

} // namespace lastrivet::readiness
