// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hours/Estimates.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::hours;
using namespace lastrivet::test;

namespace {

/// A wing with a rib in it, and steps that log entries are worked on.
struct Bench {
    ProjectBuilder project;
    Id<Component> wing = project.part("Wing");
    Id<Component> rib = project.part("Rib", wing);

    Id<Step> step(Id<Component> part, std::optional<std::int64_t> estimate,
                  std::optional<std::string_view> done)
    {
        const auto id = project.step(part, "Step");
        project.change(id, [&](Step &step) {
            if (estimate)
                step.estimate_minutes = Minutes{*estimate};
            if (done)
                step.done_on = on(*done);
        });
        return id;
    }
    Id<WorkSession> work(Id<Step> step, std::string_view began, std::int64_t minutes)
    {
        const auto id = project.session(rib, began, minutes);
        project.change(id, [&](WorkSession &work) { work.step_id = step; });
        return id;
    }
};

} // namespace

TEST_CASE("A finished step stands with its estimate beside all that was worked on it")
{
    Bench bench;
    const auto rivet = bench.step(bench.rib, 60, "2026-03-05");
    bench.work(rivet, "2026-03-02", 50);
    const auto two = bench.work(rivet, "2026-03-04", 30);
    const auto helper = bench.project.person("Bo", {Role::Helper});
    bench.project.change(two, [&](WorkSession &work) {
        work.workers = {{bench.project.builder}, {helper, Minutes{20}}};
    });
    const auto prime = bench.step(bench.wing, 100, "2026-03-06");
    bench.work(prime, "2026-03-06", 80);
    const auto told = estimates(bench.project.records, on("2026-03-31"));
    CHECK(told.steps == std::vector<StepEstimate>{{rivet, Minutes{60}, Minutes{100}},
                                                  {prime, Minutes{100}, Minutes{80}}});
    // The wing has its own step and the rib's.
    CHECK(told.parts == std::vector<PartEstimate>{{bench.wing, 2, Minutes{160}, Minutes{180}},
                                                  {bench.rib, 1, Minutes{60}, Minutes{100}}});
    CHECK(told.estimate == Minutes{160});
    CHECK(told.actual == Minutes{180});
}

TEST_CASE("Steps without an estimate, without hours or not finished yet are no comparison")
{
    Bench bench;
    bench.work(bench.step(bench.rib, {}, "2026-03-05"), "2026-03-05", 10);
    bench.step(bench.rib, 60, "2026-03-05");
    bench.work(bench.step(bench.rib, 60, {}), "2026-03-05", 10);
    bench.work(bench.step(bench.rib, 60, "2026-04-01"), "2026-03-05", 10);
    const auto gone = bench.step(bench.rib, 60, "2026-03-05");
    bench.work(gone, "2026-03-05", 10);
    bench.project.withdraw(gone);
    const auto told = estimates(bench.project.records, on("2026-03-31"));
    CHECK(told.steps.empty());
    CHECK(told.parts.empty());
    CHECK(told.without_estimate == 1);
    CHECK(told.without_hours == 1);
}

TEST_CASE("A comparison as of a day knows no later work, and a withdrawn log entry is none")
{
    Bench bench;
    const auto step = bench.step(bench.rib, 60, "2026-03-05");
    bench.work(step, "2026-03-05", 40);
    bench.work(step, "2026-04-05", 500);
    bench.project.withdraw(bench.work(step, "2026-03-05", 700));
    CHECK(estimates(bench.project.records, on("2026-03-31")).actual == Minutes{40});
    CHECK(estimates(bench.project.records, on("2026-04-05")).actual == Minutes{540});
    CHECK(minutesByStep(bench.project.records, on("2026-03-04")).empty());
}
