// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Readiness.h"

#include "core/base/AtOnce.h"
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

/// All but what stands in the way, which other answers are made from.
ClosingAnswer answerFor(Verdicts &verdicts, std::size_t index)
{
    const Ground &ground = verdicts.ground();
    const ClosingGround &here = ground.closings[index];
    const auto closed = verdicts.closingMoment(index, verdicts.asOf());
    const Moment at = closed.value_or(verdicts.asOf());
    const auto &blockers = verdicts.blockers(index, at);
    ClosingAnswer answer;
    answer.id = here.closing->id;
    answer.reach = reachOf(ground, here);
    if (closed)
        answer.state = verdicts.isClosedEarly(index, *closed) ? State::ClosedEarly : State::Closed;
    else
        answer.state = openState(blockers);
    const Judgement judgement(ground, verdicts.profile(), verdicts, index, at, verdicts.asOf());
    answer.on_record = countOnRecord(judgement);
    answer.begun = closed || isBegun(judgement, answer.on_record);
    return answer;
}

/// Answers for every second closing. The large boxes of a project often lie together in the list,
/// so that halves of it would take very different times.
void answerEveryOther(Verdicts verdicts, std::vector<ClosingAnswer> &answers, std::size_t first)
{
    for (std::size_t i = first; i < answers.size(); i += 2)
        answers[i] = answerFor(verdicts, i);
    for (std::size_t i = first; i < answers.size(); i += 2) {
        const auto closed = verdicts.closingMoment(i, verdicts.asOf());
        answers[i].blockers = verdicts.handOver(i, closed.value_or(verdicts.asOf()));
    }
}

} // namespace

Answer readiness(const Records &records, const Profile &profile, Moment asOf)
{
    const Ground ground(records);
    Answer answer{asOf, profile.id, {}, {}, {}, {}, {}, {}, {}, {}};
    answer.closings.resize(ground.closings.size());
    // Either judges the boxes within its boxes for itself.
    const auto answerFrom = [&](std::size_t first) {
        answerEveryOther({ground, profile, asOf}, answer.closings, first);
    };
    atOnce([&] { answerFrom(1); }, [&] { answerFrom(0); });
    atOnce(
        [&] {
            Verdicts verdicts(ground, profile, asOf);
            answer.out_of_reach = outOfReach(verdicts, answer);
            answer.last_chance = lastChances(verdicts, answer);
            answer.unlock = unlocking(answer);
            answer.to_complete = gaps(verdicts, answer);
            answer.components = badges(ground, answer);
        },
        [&] {
            answer.workable = workableSteps(ground, answer);
            answer.visit_plan = visitPlan(ground, answer);
        });
    return answer;
}

} // namespace lastrivet::readiness
