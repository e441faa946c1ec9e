// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A measurement is missing until it, or the same one again, is taken")
{
    RuleBench bench(readiness::Rule::MeasurementMissing);
    const auto first = bench.measurement(bench.rib, "Hinge gap");
    CHECK(bench.must(first, "2026-03-10"));
    const auto again = bench.measurement(bench.rib, "Hinge gap");
    bench.change(again, [](Measurement &m) {
        m.value = 1.5;
        m.measured_on = on("2026-03-12");
    });
    CHECK(bench.must(first, "2026-03-11"));
    CHECK(bench.quiet(first, "2026-03-12"));
}

TEST_CASE("Another thing measured on the same part does not stand in")
{
    RuleBench bench(readiness::Rule::MeasurementMissing);
    const auto gap = bench.measurement(bench.rib, "Hinge gap");
    const auto travel = bench.measurement(bench.rib, "Travel");
    bench.change(travel, [](Measurement &m) {
        m.value = 20;
        m.measured_on = on("2026-03-12");
    });
    CHECK(bench.must(gap, "2026-03-12"));
}

TEST_CASE("The same thing measured on another part does not stand in")
{
    RuleBench bench(readiness::Rule::MeasurementMissing);
    const auto gap = bench.measurement(bench.rib, "Hinge gap");
    const auto other = bench.measurement(bench.panel, "Hinge gap");
    bench.change(other, [](Measurement &m) {
        m.value = 1.5;
        m.measured_on = on("2026-03-12");
    });
    CHECK(bench.must(gap, "2026-03-12"));
    CHECK(bench.quiet(other, "2026-03-12"));
}
