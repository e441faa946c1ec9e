// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Readiness.h"

#include "core/readiness/CountOnRecord.h"
#include "core/readiness/Lists.h"
#include "core/readiness/Verdicts.h"

#include <algorithm>

namespace lastrivet::readiness {

namespace {

IdSet<Component> reachOf(const Ground &ground, const ClosingGround &here)
{
    IdSet<Component> parts;
    for (const Stretch &stretch : here.reach) {
        for (Place place = stretch.begin; place < stretch.end; ++place)
            parts.push_back(ground.tree.part(place).id);
    }
    std::sort(parts.begin(), parts.end());
    return parts;
}

ClosingAnswer answerFor(Verdicts &verdicts, std::size_t index)
{
    const Ground &ground = verdicts.ground();
    const ClosingGround &here = ground.closings[index];
    const auto closed = verdicts.closingMoment(index, verdicts.asOf());
    const Moment at = closed.value_or(verdicts.asOf());
    ClosingAnswer answer;
    answer.id = here.closing->id;
    answer.reach = reachOf(ground, here);
    answer.blockers = verdicts.blockers(index, at);
    if (closed)
        answer.state = verdicts.isClosedEarly(index, *closed) ? State::ClosedEarly : State::Closed;
    else
        answer.state = openState(answer.blockers);
    const Judgement judgement(ground, verdicts.profile(), verdicts, index, at, verdicts.asOf());
    answer.on_record = countOnRecord(judgement);
    answer.begun = closed || isBegun(judgement, answer.on_record);
    return answer;
}

} // namespace

Answer readiness(const Records &records, const Profile &profile, Moment asOf)
{
    const Ground ground(records);
    Verdicts verdicts(ground, profile, asOf);
    Answer answer{asOf, profile.id, {}, {}, {}, {}, {}, {}, {}, {}};
    answer.closings.reserve(ground.closings.size());
    for (std::size_t i = 0; i < ground.closings.size(); ++i)
        answer.closings.push_back(answerFor(verdicts, i));
    answer.out_of_reach = outOfReach(verdicts, answer);
    answer.last_chance = lastChances(verdicts, answer);
    answer.workable = workableSteps(verdicts, answer);
    answer.visit_plan = visitPlan(verdicts, answer);
    answer.unlock = unlocking(answer);
    answer.to_complete = gaps(verdicts, answer);
    answer.components = badges(ground, answer);
    return answer;
}

} // namespace lastrivet::readiness
