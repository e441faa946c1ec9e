// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Readiness.h"

#include "core/base/InParallel.h"
#include "core/readiness/CountOnRecord.h"
#include "core/readiness/Lists.h"
#include "core/readiness/Verdicts.h"

#include <algorithm>
#include <array>
#include <functional>
#include <utility>

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

/// The answer for one closing, without its blockers: judging other closings still needs them.
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

using Share = std::vector<std::size_t>;

/// The closings in two shares of about the same work, the same ones every time.
std::array<Share, 2> shared(const Ground &ground)
{
    std::vector<std::pair<std::size_t, std::size_t>> bySize;
    for (std::size_t i = 0; i < ground.closings.size(); ++i) {
        std::size_t parts = 1;
        for (const Stretch &stretch : ground.closings[i].reach)
            parts += stretch.end - stretch.begin;
        bySize.emplace_back(parts, i);
    }
    std::ranges::sort(bySize, std::greater());
    std::array<Share, 2> shares;
    std::array<std::size_t, 2> work{};
    for (const auto &[parts, closing] : bySize) {
        const std::size_t lighter = work[1] < work[0];
        shares[lighter].push_back(closing);
        work[lighter] += parts;
    }
    return shares;
}

void answerShare(Verdicts verdicts, const Share &share, std::vector<ClosingAnswer> &answers)
{
    for (const std::size_t i : share)
        answers[i] = answerFor(verdicts, i);
    for (const std::size_t i : share) {
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
    const auto shares = shared(ground);
    // Each share has verdicts of its own and judges inner closings anew, so the threads write
    // nothing in common.
    const auto answerOne = [&](const Share &share) {
        answerShare({ground, profile, asOf}, share, answer.closings);
    };
    inParallel([&] { answerOne(shares[0]); }, [&] { answerOne(shares[1]); });
    inParallel(
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
