// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/ForecastCsv.h"

#include "core/exchange/csv/CsvExport.h"

#include <fmt/ostream.h>

namespace lastrivet::exchange {

namespace {

std::string rangeCells(const forecast::Range<std::int64_t> &range)
{
    return fmt::format("{},{},{},{}", range.p10, range.p50, range.p80, range.p90);
}

std::string finishCells(const std::optional<forecast::Range<Moment>> &finish)
{
    return finish ? fmt::format("{},{},{},{}", finish->p10.text(), finish->p50.text(),
                                finish->p80.text(), finish->p90.text())
                  : std::string(",,,");
}

std::string dayText(std::chrono::sys_days day)
{
    const auto moment = Moment::ofDay(day);
    return moment ? moment->text() : std::string();
}

} // namespace

void writeForecast(const forecast::Forecast &told, const Records &records, std::ostream &out)
{
    out << "component_id,part,p10,p50,p80,p90,share_of_spread,finish_p10,finish_p50,finish_p80,"
           "finish_p90\r\n";
    fmt::print(out, ",all,{},1.0000,{}\r\n", rangeCells(told.minutes_to_go),
               finishCells(told.finish));
    for (const auto &assembly : told.assemblies) {
        const Component *part = records.find(assembly.assembly);
        fmt::print(out, "{},{},{},{:.4f},,,,\r\n",
                   assembly.assembly ? fmt::to_string(assembly.assembly.value()) : std::string(),
                   csvCell(part ? part->name : std::string_view()),
                   rangeCells(assembly.minutes_to_go), assembly.share_of_spread);
    }
}

void writeLookBack(const forecast::LookBack &told, std::ostream &out)
{
    out << "day,steps_left,minutes_so_far,to_go_p10,to_go_p50,to_go_p80,to_go_p90,finish_p10,"
           "finish_p50,finish_p80,finish_p90,steps_since,said_p10,said_p50,said_p80,said_p90,"
           "came\r\n";
    for (const auto &look : told.looks)
        fmt::print(out, "{},{},{},{},{},{},{},{}\r\n", look.day.text(), look.steps_left,
                   look.minutes_so_far, rangeCells(look.minutes_to_go), finishCells(look.finish),
                   look.steps_since, rangeCells(look.said), look.came);
}

void writeCourse(const std::vector<hours::CoursePoint> &course,
                 const std::vector<forecast::ConePoint> &cone, std::ostream &out)
{
    out << "day,worker_minutes,rework_minutes,forecast_p10,forecast_p50,forecast_p80,"
           "forecast_p90\r\n";
    for (const auto &point : course)
        fmt::print(out, "{},{},{},,,,\r\n", dayText(point.day), point.done.count(),
                   point.rework.count());
    const std::int64_t done = course.empty() ? 0 : course.back().done.count();
    for (const auto &point : cone)
        fmt::print(out, "{},,,{},{},{},{}\r\n", point.day.text(), done + point.minutes.p10,
                   done + point.minutes.p50, done + point.minutes.p80, done + point.minutes.p90);
}

} // namespace lastrivet::exchange
