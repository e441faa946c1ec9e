// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hours/Course.h"

#include "core/hours/Estimates.h"
#include "core/hours/Hours.h"

#include <algorithm>
#include <map>

namespace lastrivet::hours {

using namespace std::chrono;

sys_days mondayOf(sys_days day)
{
    return day - days{weekday{day}.iso_encoding() - 1};
}

std::vector<CoursePoint> course(const Records &records, Moment asOf)
{
    std::map<sys_days, CoursePoint> weeks;
    for (const WorkSession &session : records.work_sessions) {
        if (!counts(session, asOf))
            continue;
        CoursePoint &week = weeks[mondayOf(session.began->day())];
        week.done += workerMinutes(session);
        if (session.kind == WorkKind::Rework)
            week.rework += workerMinutes(session);
    }
    std::vector<CoursePoint> points;
    if (weeks.empty())
        return points;
    CoursePoint sum{weeks.begin()->first - days{1}, {}, {}};
    points.push_back(sum);
    for (auto monday = weeks.begin()->first; monday <= asOf.day(); monday += days{7}) {
        if (const auto week = weeks.find(monday); week != weeks.end()) {
            sum.done += week->second.done;
            sum.rework += week->second.rework;
        }
        sum.day = std::min(monday + days{6}, asOf.day());
        points.push_back(sum);
    }
    return points;
}

} // namespace lastrivet::hours
