// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Lists.h"

#include <algorithm>
#include <map>
#include <queue>
#include <tuple>
#include <unordered_set>

namespace lastrivet::readiness {

namespace {

/// A step or squawk to be done before a visit; a missing estimate counts as 0 minutes.
struct Work {
    std::int64_t minutes = 0;
    bool isUnknown = false;
    /// The closings that need it, by position among the candidates.
    std::vector<std::size_t> candidates;
    bool isPlanned = false;
};

struct Candidate {
    const ClosingAnswer *closing = nullptr;
    std::vector<std::size_t> works;
    std::int64_t marginal = 0;
};

bool waitsForVisit(const Records &records, const ClosingAnswer &closing)
{
    const auto isVisit = [&](const Blocker &blocker) {
        if (blocker.rule != Rule::UnsignedHoldPoint && blocker.rule != Rule::OutdatedSignOff)
            return false;
        const HoldPoint *point = records.find(Id<HoldPoint>{blocker.record.id});
        return point->signer_role != SignerRole::Builder;
    };
    const Closing *record = records.find(closing.id);
    return record->permanent && !isClosed(closing.state) &&
           std::any_of(closing.blockers.begin(), closing.blockers.end(), isVisit);
}

/// Plans greedily: the next closing is always the one that needs the least work not yet planned.
class Planner {
public:
    Planner(const Ground &ground, const Answer &answer)
        : m_ground(ground)
        , m_answer(answer)
    {
    }

    void add(const ClosingAnswer &closing)
    {
        Candidate candidate{&closing, {}, 0};
        std::unordered_set<std::size_t> seen;
        collect(*m_ground.closingIndex(closing.id), seen, candidate.works);
        std::sort(candidate.works.begin(), candidate.works.end());
        candidate.works.erase(std::unique(candidate.works.begin(), candidate.works.end()),
                              candidate.works.end());
        for (const std::size_t work : candidate.works) {
            m_works[work].candidates.push_back(m_candidates.size());
            candidate.marginal += m_works[work].minutes;
        }
        m_candidates.push_back(std::move(candidate));
    }

    void plan(std::vector<VisitPlanRow> &rows)
    {
        for (std::size_t i = 0; i < m_candidates.size(); ++i)
            m_queue.push(offer(i));
        std::int64_t total = 0;
        while (!m_queue.empty()) {
            const Offer best = m_queue.top();
            m_queue.pop();
            Candidate &candidate = m_candidates[best.candidate];
            if (!candidate.closing || best.marginal != candidate.marginal)
                continue;
            total += candidate.marginal;
            const auto unknown = take(candidate);
            rows.push_back({candidate.closing->id, Minutes{total}, unknown,
                            otherBlockers(*candidate.closing)});
            candidate.closing = nullptr;
        }
    }

private:
    /// A candidate with its marginal minutes when it was queued; outdated ones are skipped. The
    /// greatest comes first from the queue, so "less" means more minutes.
    struct Offer {
        std::int64_t marginal;
        Id<Closing> id;
        std::size_t candidate;

        bool operator<(const Offer &other) const
        {
            return std::tie(marginal, id) > std::tie(other.marginal, other.id);
        }
    };

    Offer offer(std::size_t candidate) const
    {
        return {m_candidates[candidate].marginal, m_candidates[candidate].closing->id, candidate};
    }

    /// The work of a closing and of the open boxes inside it, and inside those.
    void collect(std::size_t index, std::unordered_set<std::size_t> &seen,
                 std::vector<std::size_t> &works)
    {
        if (!seen.insert(index).second)
            return;
        for (const Blocker &blocker : m_answer.closings[index].blockers) {
            const bool isWork =
                blocker.rule == Rule::UndoneStep || blocker.rule == Rule::OpenSquawk;
            if (isWork && blocker.weight == Weight::Must)
                works.push_back(workFor(blocker.record));
        }
        for (const std::size_t inner : m_ground.closings[index].inner) {
            if (!isClosed(m_answer.closings[inner].state))
                collect(inner, seen, works);
        }
    }

    std::size_t workFor(RecordRef record)
    {
        const auto [entry, isNew] = m_workOf.try_emplace(record, m_works.size());
        if (isNew)
            m_works.push_back(estimate(record));
        return entry->second;
    }

    Work estimate(RecordRef record) const
    {
        const Records &records = m_ground.records;
        std::optional<Minutes> minutes;
        if (record.type == RecordType::Step) {
            minutes = records.find(Id<Step>{record.id})->estimate_minutes;
        } else {
            const Squawk &squawk = *records.find(Id<Squawk>{record.id});
            const bool isFixed = happened(squawk.fixed_on, m_answer.as_of);
            minutes = isFixed ? Minutes{0} : squawk.estimate_minutes;
        }
        return {minutes.value_or(Minutes{0}).count(), !minutes, {}, false};
    }

    /// Marks its work as planned; returns how many estimates were missing.
    std::int64_t take(const Candidate &candidate)
    {
        std::int64_t unknown = 0;
        for (const std::size_t index : candidate.works) {
            Work &work = m_works[index];
            if (work.isPlanned)
                continue;
            work.isPlanned = true;
            unknown += work.isUnknown;
            for (const std::size_t other : work.candidates) {
                m_candidates[other].marginal -= work.minutes;
                if (work.minutes > 0 && m_candidates[other].closing &&
                    &m_candidates[other] != &candidate)
                    m_queue.push(offer(other));
            }
        }
        return unknown;
    }

    static std::int64_t otherBlockers(const ClosingAnswer &closing)
    {
        const auto isOther = [](const Blocker &blocker) {
            return blocker.weight == Weight::Must && !blocker.waits_for &&
                   blocker.rule != Rule::UndoneStep && blocker.rule != Rule::OpenSquawk &&
                   blocker.rule != Rule::InnerClosingOpen;
        };
        return std::count_if(closing.blockers.begin(), closing.blockers.end(), isOther);
    }

    const Ground &m_ground;
    const Answer &m_answer;
    std::vector<Candidate> m_candidates;
    std::vector<Work> m_works;
    std::map<RecordRef, std::size_t> m_workOf;
    std::priority_queue<Offer> m_queue;
};

} // namespace

std::vector<VisitPlanRow> visitPlan(const Ground &ground, const Answer &answer)
{
    std::vector<VisitPlanRow> rows;
    Planner planner(ground, answer);
    for (const ClosingAnswer &closing : answer.closings) {
        if (!waitsForVisit(ground.records, closing))
            continue;
        if (closing.state == State::Hold)
            planner.add(closing);
        else
            rows.push_back({closing.id, Minutes{0}, 0, 0});
    }
    planner.plan(rows);
    return rows;
}

} // namespace lastrivet::readiness
