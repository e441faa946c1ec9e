// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/SquawkOrder.h"

#include <algorithm>
#include <map>
#include <set>

namespace lastrivet::readiness {

namespace {

using Closings = std::map<std::int64_t, std::set<Id<Closing>>>;

bool mayBeNext(State state)
{
    return state == State::Clear || state == State::ReadyToSign || state == State::ReadyToInspect;
}

/// By squawk, the closings that may be next and would bury it.
Closings burying(const Answer &answer)
{
    Closings found;
    for (const ClosingAnswer &closing : answer.closings) {
        if (!mayBeNext(closing.state))
            continue;
        for (const Blocker &blocker : closing.blockers) {
            if (blocker.rule == Rule::OpenSquawk)
                found[blocker.record.id].insert(closing.id);
        }
    }
    for (const LastChance &last : answer.last_chance) {
        for (const RecordRef &item : last.items) {
            if (item.type == RecordType::Squawk)
                found[item.id].insert(last.closing);
        }
    }
    return found;
}

Closings buried(const Answer &answer)
{
    Closings found;
    for (const RecordAndClosings &item : answer.out_of_reach) {
        if (item.record.type == RecordType::Squawk)
            found[item.record.id].insert(item.closings.begin(), item.closings.end());
    }
    return found;
}

ListedSquawk listed(const Squawk &squawk, Moment asOf, const Closings &soon, const Closings &gone)
{
    if (happened(squawk.verified_on, asOf) || happened(squawk.accepted_on, asOf))
        return {squawk.id, Reachable::Done, {}};
    const auto id = squawk.id.value();
    if (const auto place = soon.find(id); place != soon.end())
        return {squawk.id, Reachable::NotForLong, {place->second.begin(), place->second.end()}};
    if (const auto place = gone.find(id); place != gone.end())
        return {squawk.id, Reachable::NoLonger, {place->second.begin(), place->second.end()}};
    return {squawk.id, Reachable::Yes, {}};
}

} // namespace

std::vector<ListedSquawk> squawkOrder(const Records &records, const Answer &answer, Moment asOf)
{
    const Closings soon = burying(answer);
    const Closings gone = buried(answer);
    std::vector<ListedSquawk> list;
    for (const Squawk &squawk : records.squawks) {
        if (!squawk.withdrawn_on && happened(squawk.found_on, asOf))
            list.push_back(listed(squawk, asOf, soon, gone));
    }
    std::ranges::stable_sort(list, [&](const ListedSquawk &a, const ListedSquawk &b) {
        const Squawk &squawkA = *records.find(a.id);
        const Squawk &squawkB = *records.find(b.id);
        if (a.reachable != b.reachable)
            return a.reachable < b.reachable;
        if (squawkA.severity != squawkB.severity)
            return squawkA.severity < squawkB.severity;
        if (squawkA.found_on && squawkB.found_on && *squawkA.found_on != *squawkB.found_on)
            return sortsBefore(*squawkA.found_on, *squawkB.found_on);
        return a.id < b.id;
    });
    return list;
}

} // namespace lastrivet::readiness
