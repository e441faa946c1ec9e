// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/SessionMatcher.h"

#include "core/records/invariants/Bounds.h"

#include <algorithm>
#include <cstdlib>
#include <tuple>

namespace lastrivet::evidence {

namespace {

constexpr std::int64_t minutesInDay = 24 * 60;

std::int64_t minuteOf(Moment moment)
{
    return std::int64_t{moment.day().time_since_epoch().count()} * minutesInDay +
           std::max(moment.minuteOfDay(), 0);
}

std::chrono::sys_days dayOf(std::int64_t minute)
{
    using namespace std::chrono;
    return floor<days>(sys_time<minutes>{minutes{minute}});
}

} // namespace

SessionMatcher::SessionMatcher(const Records &records)
{
    for (const WorkSession &session : records.work_sessions) {
        if (session.withdrawn_on || !session.began)
            continue;
        Session known{session.id, minuteOf(*session.began), minuteOf(*session.began),
                      session.began->hasTime() && !session.approximate};
        // A strange database may hold any number, and each day of the span costs a row.
        if (known.has_time && session.minutes)
            known.end += std::clamp(*session.minutes, Minutes{0}, longestRecorded).count();
        for (auto day = dayOf(known.begin); day <= dayOf(known.end); day += std::chrono::days{1})
            m_byDay.emplace(day, known);
    }
}

std::vector<SessionMatch> SessionMatcher::matches(Moment takenOn) const
{
    const std::int64_t taken = minuteOf(takenOn);
    // Sorted by: whether it spans the moment, how far away or how long it is, the id.
    std::vector<std::tuple<int, std::int64_t, Id<WorkSession>>> found;
    const auto [first, last] = m_byDay.equal_range(takenOn.day());
    for (auto place = first; place != last; ++place) {
        const Session &session = place->second;
        const bool isTimed = session.has_time && takenOn.hasTime();
        const std::int64_t before = session.begin - taken;
        const std::int64_t behind = taken - session.end;
        const bool spans = isTimed && before <= 0 && behind <= 0 && session.end > session.begin;
        const std::int64_t away = isTimed ? std::max(before, behind) : minutesInDay;
        found.emplace_back(spans ? 0 : 1, spans ? session.end - session.begin : away, session.id);
    }
    std::sort(found.begin(), found.end());
    std::vector<SessionMatch> matches;
    for (const auto &[fit, distance, id] : found)
        matches.push_back(
            {id, fit == 0 ? SessionMatch::Fit::WithinSpan : SessionMatch::Fit::SameDay});
    return matches;
}

} // namespace lastrivet::evidence
