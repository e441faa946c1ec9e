// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A wrench has to be in calibration on the day it was used")
{
    RuleBench bench(readiness::Rule::UncalibratedTool);
    Tool wrench;
    wrench.name = "Torque wrench";
    wrench.needs_calibration = true;
    wrench.calibrations = {{on("2025-03-10"), on("2026-03-10"), {}}};
    const auto tool = bench.add(wrench);
    const auto used = [&](std::string_view day) {
        const auto bolt = bench.fastener(bench.rib, "Spar root");
        bench.change(bolt, [&](Fastener &f) {
            f.fitted_on = f.torqued_on = on(day);
            f.tool_id = tool;
        });
        return bolt;
    };
    CHECK(bench.should(used("2025-03-09"), "2026-06-01"));
    CHECK(bench.quiet(used("2025-03-10"), "2026-06-01"));
    CHECK(bench.quiet(used("2026-03-10"), "2026-06-01"));
    const auto late = used("2026-03-11");
    CHECK(bench.should(late, "2026-06-01"));
    bench.change(tool, [](Tool &t) {
        t.calibrations.push_back({on("2026-03-11"), on("2027-03-11"), {}});
    });
    CHECK(bench.quiet(late, "2026-06-01"));
}

TEST_CASE("What was measured is asked after its tool too, and no tool that needs no calibration")
{
    RuleBench bench(readiness::Rule::UncalibratedTool);
    const auto gauge = bench.add(Tool{.name = "Feeler gauge"});
    const auto gap = bench.measurement(bench.rib, "Hinge gap");
    bench.change(gap, [&](Measurement &m) {
        m.value = 1.5;
        m.measured_on = on("2026-03-10");
        m.tool_id = gauge;
    });
    bench.change(gauge, [](Tool &t) { t.needs_calibration = true; });
    CHECK(bench.quiet(gap, "2026-03-09"));
    CHECK(bench.should(gap, "2026-03-10"));
    bench.change(gauge, [](Tool &t) { t.needs_calibration = false; });
    CHECK(bench.quiet(gap, "2026-03-10"));
    bench.change(gauge, [](Tool &t) { t.needs_calibration = true; });
    bench.change(gap, [](Measurement &m) { m.tool_id = {}; });
    CHECK(bench.quiet(gap, "2026-03-10"));
}
