// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/HoursCsv.h"
#include "core/exchange/csv/ForecastCsv.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

#include <sstream>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

struct Bench {
    ProjectBuilder project;
    Id<Component> wing = project.part("Wing, left");
    Id<Component> rib = project.part("=Rib", wing);
    Id<Step> step = project.step(rib, "Flute it");

    Bench()
    {
        const auto work = project.session(rib, "2025-12-29", 90);
        project.change(work, [&](WorkSession &session) {
            session.step_id = step;
            session.kind = WorkKind::Fabrication;
            session.workers = {{project.builder}, {project.person("Bo", {Role::Helper})}};
        });
        project.change(step, [](Step &done) {
            done.estimate_minutes = Minutes{120};
            done.done_on = on("2025-12-29");
        });
        project.session({}, "2026-01-05", 20);
    }
    std::string csv(hours::Grouping by) const
    {
        std::ostringstream out;
        exchange::writeHours(project.records, on("2026-02-01"), by, out);
        return out.str();
    }
};

} // namespace

TEST_CASE("Hours as CSV have every figure of every grouping, and nothing a spreadsheet runs")
{
    using hours::Grouping;
    const Bench bench;
    CHECK(bench.csv(Grouping::Component) ==
          "component_id,code,part,own_minutes,own_worker_minutes,own_entries,minutes,"
          "worker_minutes,entries\r\n"
          "2,,\"Wing, left\",0,0,0,90,180,1\r\n"
          "3,,'=Rib,90,180,1,90,180,1\r\n"
          ",,,20,20,1,20,20,1\r\n");
    CHECK(bench.csv(Grouping::Week) ==
          "week,rework_worker_minutes,minutes,worker_minutes,entries\r\n"
          "2026-W01,0,90,180,1\r\n"
          "2026-W02,0,20,20,1\r\n");
    CHECK(bench.csv(Grouping::Month) ==
          "month,rework_worker_minutes,minutes,worker_minutes,entries\r\n"
          "2025-12,0,90,180,1\r\n"
          "2026-01,0,20,20,1\r\n");
    CHECK(bench.csv(Grouping::Kind) == "kind,minutes,worker_minutes,entries\r\n"
                                       "fabrication,90,180,1\r\n"
                                       "other,20,20,1\r\n");
    CHECK(bench.csv(Grouping::Person).ends_with(",Bo,90,1\r\n"));
    CHECK(bench.csv(Grouping::Step) ==
          "component_id,code,part,step_id,step,estimate_minutes,worker_minutes\r\n"
          "3,,'=Rib,4,Flute it,120,180\r\n");
}

TEST_CASE("The course as CSV goes on from what is done into what may come")
{
    const Bench bench;
    std::ostringstream out;
    exchange::writeCourse(hours::course(bench.project.records, on("2026-01-06")),
                          {{on("2026-01-06"), {}}, {on("2026-01-13"), {10, 20, 30, 40}}}, out);
    CHECK(out.str() == "day,worker_minutes,rework_minutes,forecast_p10,forecast_p50,forecast_p80,"
                       "forecast_p90\r\n"
                       "2025-12-28,0,0,,,,\r\n"
                       "2026-01-04,180,0,,,,\r\n"
                       "2026-01-06,200,0,,,,\r\n"
                       "2026-01-06,,,200,200,200,200\r\n"
                       "2026-01-13,,,210,220,230,240\r\n");
}
