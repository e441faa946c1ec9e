// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/HoursCharts.h"
#include "ui/print/HoursTables.h"

namespace lastrivet::print {

namespace {

double inHours(std::int64_t minutes)
{
    return print::inHours(Minutes{minutes});
}

} // namespace

ChartPlan coneChart(const Wording &words, const std::vector<hours::CoursePoint> &course,
                    const std::vector<forecast::ConePoint> &cone)
{
    ChartPlan plan = hoursPlan(words, words.text("Hours done, and how they may go on"));
    ChartPlan::Curve done{words.text("Done"), ChartLook::Line, {}};
    for (const auto &point : course)
        done.points.emplace_back(onAxis(point.day), print::inHours(point.done));
    const double now = done.points.empty() ? 0 : done.points.back().y();
    if (cone.size() > 1) {
        ChartPlan::Band band{words.text("P10 to P90"), ChartLook::Hatched, {}, {}};
        ChartPlan::Curve middle{QStringLiteral("P50"), ChartLook::Dashed, {}};
        for (const auto &point : cone) {
            const double day = onAxis(point.day.day());
            band.lower.emplace_back(day, now + inHours(point.minutes.p10));
            middle.points.emplace_back(day, now + inHours(point.minutes.p50));
            band.upper.emplace_back(day, now + inHours(point.minutes.p90));
        }
        plan.bands.push_back(std::move(band));
        plan.curves.push_back(std::move(middle));
    }
    if (!done.points.empty())
        plan.curves.push_back(std::move(done));
    if (!plan.isEmpty())
        plan.summary = words.text("{0} h are done.",
                                  {wholeHours(words, std::int64_t(now * 60)).toStdString()});
    return plan;
}

ChartPlan lookBackChart(const Wording &words, const forecast::LookBack &told)
{
    ChartPlan plan = hoursPlan(words, words.text("Said of the work done since, and what came"));
    ChartPlan::Band band{words.text("Said, P10 to P90"), ChartLook::Hatched, {}, {}};
    ChartPlan::Curve middle{words.text("Said, P50"), ChartLook::Dashed, {}};
    ChartPlan::Curve came{words.text("Came"), ChartLook::Marked, {}};
    for (const auto &look : told.looks) {
        const double day = onAxis(look.day.day());
        band.lower.emplace_back(day, inHours(look.said.p10));
        band.upper.emplace_back(day, inHours(look.said.p90));
        middle.points.emplace_back(day, inHours(look.said.p50));
        came.points.emplace_back(day, inHours(look.came));
    }
    if (told.looks.size() > 1) {
        plan.bands.push_back(std::move(band));
        plan.curves.push_back(std::move(middle));
        plan.curves.push_back(std::move(came));
    }
    return plan;
}

} // namespace lastrivet::print
