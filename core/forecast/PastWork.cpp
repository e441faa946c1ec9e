// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/forecast/PastWork.h"

#include "core/hours/Course.h"
#include "core/hours/Estimates.h"
#include "core/hours/Hours.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace lastrivet::forecast {

namespace {

using std::chrono::days;
using std::chrono::sys_days;

constexpr int mostWeeks = 26;

} // namespace

PastWork pastWork(const Records &records, Moment asOf)
{
    PastWork past;
    std::map<sys_days, double> weeks;
    for (const auto &session : records.work_sessions) {
        if (!hours::counts(session, asOf))
            continue;
        const double minutes = double(hours::workerMinutes(session).count());
        (session.kind == WorkKind::Rework ? past.rework_minutes : past.other_minutes) += minutes;
        weeks[hours::mondayOf(session.began->day())] += minutes;
    }
    if (!weeks.empty()) {
        const sys_days running = hours::mondayOf(asOf.day());
        const sys_days first = std::max(weeks.begin()->first, running - days{7 * mostWeeks});
        for (auto monday = first; monday < running; monday += days{7})
            past.weeks.push_back(weeks.contains(monday) ? weeks[monday] : 0);
    }
    for (const auto &step : hours::estimates(records, asOf).steps)
        past.log_ratios.push_back(
            std::log(double(step.actual.count()) / double(step.estimate.count())));
    return past;
}

} // namespace lastrivet::forecast
