// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Lists.h"

#include "core/readiness/PartsCount.h"

#include <algorithm>
#include <limits>
#include <tuple>
#include <unordered_map>
#include <unordered_set>

namespace lastrivet::readiness {

namespace {

/// Finds what can be worked on at one moment.
class Bench {
public:
    Bench(const Ground &ground, const Answer &answer)
        : m_ground(ground)
        , m_answer(answer)
        , m_now(answer.as_of, answer.as_of)
    {
        findBuried();
        countHolds();
    }

    bool isWorkable(const Step &step) const
    {
        return m_now.exists(step) && !m_now.isDoneOrDropped(step) &&
               !m_buried.contains(step.id.value()) && closesWhatIsClear(step) && isFree(step);
    }

    /// Rising order is best first.
    auto rank(const Step &step) const
    {
        constexpr std::int64_t last = std::numeric_limits<std::int64_t>::max();
        const auto holds = m_holds.find(step.id.value());
        return std::tuple(lacksParts(step), holds == m_holds.end() ? 0 : -holds->second,
                          step.position.value_or(last),
                          step.estimate_minutes ? step.estimate_minutes->count() : last, step.id);
    }

private:
    /// Steps left to do in closed boxes, not excused from them.
    void findBuried()
    {
        for (std::size_t i = 0; i < m_answer.closings.size(); ++i) {
            const ClosingGround &here = m_ground.closings[i];
            if (!here.closing->permanent || !isClosed(m_answer.closings[i].state))
                continue;
            for (const Stretch &stretch : here.reach) {
                for (const Step *step : m_ground.steps.in(stretch)) {
                    const auto &may = step->may_follow;
                    if (!m_now.isDoneOrDropped(*step) && step->closes != here.closing->id &&
                        !std::binary_search(may.begin(), may.end(), here.closing->id))
                        m_buried.insert(step->id.value());
                }
            }
        }
    }

    void countHolds()
    {
        for (const ClosingAnswer &closing : m_answer.closings) {
            if (closing.state != State::Hold)
                continue;
            for (const Blocker &blocker : closing.blockers) {
                if (blocker.rule == Rule::UndoneStep && blocker.weight == Weight::Must)
                    ++m_holds[blocker.record.id];
            }
        }
    }

    bool closesWhatIsClear(const Step &step) const
    {
        const auto *closing = m_answer.closing(step.closes);
        return !closing || closing->state == State::Clear;
    }

    /// Everything before it is done or dropped; what is withdrawn or not yet planned stands for
    /// what is before that.
    bool isFree(const Step &step) const
    {
        std::vector<Id<Step>> waiting = step.after;
        std::unordered_set<std::int64_t> seen;
        while (!waiting.empty()) {
            const Step *before = m_ground.records.find(waiting.back());
            waiting.pop_back();
            if (!before || !seen.insert(before->id.value()).second)
                continue;
            if (!isLive(*before) || !m_now.exists(*before))
                waiting.insert(waiting.end(), before->after.begin(), before->after.end());
            else if (!m_now.isDoneOrDropped(*before))
                return false;
        }
        return true;
    }

    bool lacksParts(const Step &step) const
    {
        const auto place = m_ground.tree.placeOf(step.component_id);
        if (!place)
            return false;
        const auto lines = m_ground.part_lines.at(*place);
        return std::any_of(lines.begin(), lines.end(), [&](const OfStep<PartLine> &entry) {
            return m_now.exists(*entry.record) &&
                   isShort(*entry.record, m_now.counts(entry.record->received_on));
        });
    }

    const Ground &m_ground;
    const Answer &m_answer;
    Reckoning m_now;
    std::unordered_set<std::int64_t> m_buried;
    std::unordered_map<std::int64_t, std::int64_t> m_holds;
};

} // namespace

std::vector<Id<Step>> workableSteps(const Ground &ground, const Answer &answer)
{
    const Bench bench(ground, answer);
    using Rank = decltype(bench.rank(std::declval<const Step &>()));
    std::vector<Rank> ranked;
    for (const Step &step : ground.records.steps) {
        if (isLive(step) && bench.isWorkable(step))
            ranked.push_back(bench.rank(step));
    }
    std::sort(ranked.begin(), ranked.end());
    std::vector<Id<Step>> steps;
    for (const Rank &rank : ranked)
        steps.push_back(std::get<Id<Step>>(rank));
    return steps;
}

} // namespace lastrivet::readiness
