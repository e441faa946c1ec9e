// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/squawks/SquawkList.h"

#include <algorithm>
#include <limits>
#include <map>
#include <set>
#include <tuple>

namespace lastrivet::squawks {

using readiness::Answer;
using readiness::Blocker;
using readiness::ClosingAnswer;
using readiness::State;
using readiness::Weight;

namespace {

/// What will bury each squawk: closings with the number of blockers that must be cleared first.
class Burials {
public:
    explicit Burials(const Answer &answer)
    {
        for (const ClosingAnswer &closing : answer.closings) {
            if (closing.state == State::Closed || closing.state == State::ClosedEarly)
                continue;
            const auto musts =
                std::count_if(closing.blockers.begin(), closing.blockers.end(),
                              [](const Blocker &blocker) { return blocker.weight == Weight::Must; });
            m_distances[closing.id] = musts;
            for (const Blocker &blocker : closing.blockers)
                add(blocker.record, closing.id);
        }
        for (const auto &chance : answer.last_chance) {
            for (const RecordRef &item : chance.items)
                add(item, chance.closing);
        }
        for (const auto &found : answer.out_of_reach)
            m_outOfReach.insert(found.record);
    }

    bool isOutOfReach(Id<Squawk> id) const { return m_outOfReach.contains(refOf(id)); }

    std::vector<Id<Closing>> closingsOf(Id<Squawk> id) const
    {
        const auto found = m_closings.find(refOf(id));
        if (found == m_closings.end())
            return {};
        std::vector<Id<Closing>> closings(found->second.begin(), found->second.end());
        std::stable_sort(closings.begin(), closings.end(), [this](auto a, auto b) {
            return m_distances.at(a) < m_distances.at(b);
        });
        return closings;
    }

    std::int64_t distanceTo(const ListedSquawk &squawk) const
    {
        if (squawk.is_out_of_reach)
            return -1;
        return squawk.closings.empty() ? std::numeric_limits<std::int64_t>::max()
                                       : m_distances.at(squawk.closings.front());
    }

private:
    static RecordRef refOf(Id<Squawk> id) { return {RecordType::Squawk, id.value()}; }

    void add(RecordRef record, Id<Closing> closing)
    {
        if (record.type == RecordType::Squawk)
            m_closings[record].insert(closing);
    }

    std::map<Id<Closing>, std::int64_t> m_distances;
    std::map<RecordRef, std::set<Id<Closing>>> m_closings;
    std::set<RecordRef> m_outOfReach;
};

} // namespace

Progress progressAt(const Squawk &squawk, Moment by)
{
    if (happened(squawk.accepted_on, by))
        return Progress::Accepted;
    if (happened(squawk.verified_on, by))
        return Progress::Verified;
    return happened(squawk.fixed_on, by) ? Progress::Fixed : Progress::Open;
}

std::vector<ListedSquawk> squawkList(const Records &records, const Answer &answer)
{
    const Burials burials(answer);
    std::vector<ListedSquawk> list;
    for (const Squawk &squawk : records.squawks) {
        if (squawk.withdrawn_on || !happened(squawk.found_on, answer.as_of))
            continue;
        list.push_back({squawk.id, progressAt(squawk, answer.as_of),
                        burials.isOutOfReach(squawk.id), burials.closingsOf(squawk.id)});
    }
    const auto rank = [&](const ListedSquawk &listed) {
        const Squawk &squawk = *records.find(listed.id);
        return std::tuple(!isOutstanding(listed.progress), burials.distanceTo(listed),
                          squawk.severity, squawk.found_on->text(), listed.id);
    };
    std::sort(list.begin(), list.end(), [&](const ListedSquawk &a, const ListedSquawk &b) {
        return rank(a) < rank(b);
    });
    return list;
}

} // namespace lastrivet::squawks
