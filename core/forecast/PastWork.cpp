// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/PastWork.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace lastrivet::forecast {

namespace {

constexpr std::int64_t mostWeeks = 26;

bool counts(const WorkSession &session, Moment asOf)
{
    return !session.withdrawn_on && session.began && !after(*session.began, asOf);
}

/// Weeks begin on Mondays, as in ISO 8601; 1970-01-05 was one.
std::int64_t weekOf(Moment moment)
{
    const auto day = moment.day().time_since_epoch().count();
    return (day + 3 >= 0 ? day + 3 : day + 3 - 6) / 7;
}

/// What the workers add up to; without workers the builder worked.
double minutesOf(const WorkSession &session)
{
    const double all = double(session.minutes.value_or(Minutes{0}).count());
    double sum = session.workers.empty() ? all : 0;
    for (const auto &worker : session.workers)
        sum += worker.minutes ? double(worker.minutes->count()) : all;
    return sum;
}

void addRatios(PastWork &past, const Records &records, Moment asOf)
{
    for (const auto &[id, minutes] : minutesByStep(records, asOf)) {
        const auto *step = records.find(id);
        const bool isDone = step && !step->withdrawn_on && step->done_on &&
                            !after(*step->done_on, asOf);
        if (isDone && step->estimate_minutes && step->estimate_minutes->count() > 0 && minutes > 0)
            past.log_ratios.push_back(std::log(minutes / double(step->estimate_minutes->count())));
    }
}

} // namespace

std::vector<std::pair<Id<Step>, double>> minutesByStep(const Records &records, Moment asOf)
{
    std::map<Id<Step>, double> sums;
    for (const auto &session : records.work_sessions) {
        if (counts(session, asOf) && session.step_id)
            sums[session.step_id] += minutesOf(session);
    }
    return {sums.begin(), sums.end()};
}

PastWork pastWork(const Records &records, Moment asOf)
{
    PastWork past;
    const auto thisWeek = weekOf(asOf);
    std::optional<std::int64_t> first;
    std::map<std::int64_t, double> byWeek;
    for (const auto &session : records.work_sessions) {
        if (!counts(session, asOf))
            continue;
        const auto minutes = minutesOf(session);
        (session.kind == WorkKind::Rework ? past.rework_minutes : past.other_minutes) += minutes;
        const auto week = weekOf(*session.began);
        first = first ? std::min(*first, week) : week;
        byWeek[week] += minutes;
    }
    if (first) {
        for (auto week = std::max(*first, thisWeek - mostWeeks); week < thisWeek; ++week)
            past.weeks.push_back(byWeek.contains(week) ? byWeek[week] : 0);
    }
    addRatios(past, records, asOf);
    return past;
}

} // namespace lastrivet::forecast
