// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Sentences.h"
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

Id<Measurement> measured(RuleBench &bench, double value, std::string_view day)
{
    Measurement m;
    m.component_id = bench.rib;
    m.what = "Hinge gap";
    m.minimum = 1.0;
    m.maximum = 2.0;
    m.value = value;
    m.measured_on = on(day);
    return bench.add(m);
}

} // namespace

TEST_CASE("Limits belong to the allowed range")
{
    RuleBench bench(readiness::Rule::MeasurementOutOfLimits);
    CHECK(bench.must(measured(bench, 0.99, "2026-03-01"), "2026-03-01"));
    CHECK(bench.quiet(measured(bench, 1.0, "2026-03-02"), "2026-03-02"));
    CHECK(bench.quiet(measured(bench, 2.0, "2026-03-03"), "2026-03-03"));
    CHECK(bench.must(measured(bench, 2.01, "2026-03-04"), "2026-03-04"));
}

TEST_CASE("Only the latest of repeated measurements counts")
{
    RuleBench bench(readiness::Rule::MeasurementOutOfLimits);
    const auto bad = measured(bench, 3, "2026-03-01");
    const auto good = measured(bench, 1.5, "2026-03-05");
    CHECK(bench.must(bad, "2026-03-04"));
    CHECK(bench.quiet(bad, "2026-03-05"));
    CHECK(bench.quiet(good, "2026-03-05"));
}

TEST_CASE("A measurement outside its limits is told with its figures")
{
    RuleBench bench(readiness::Rule::MeasurementOutOfLimits);
    const auto saidOf = [&](Id<Measurement> id) {
        const auto blocker = bench.about(id, "2026-03-04");
        REQUIRE(blocker);
        return english(readiness::sentence(*blocker, bench.records));
    };
    const auto gap = measured(bench, 2.01, "2026-03-04");
    CHECK_THAT(saidOf(gap),
               Catch::EndsWith(": the last measurement is 2.01, outside its limits (1 to 2)"));
    bench.change(gap, [](Measurement &m) {
        m.unit = "mm";
        m.minimum.reset();
    });
    CHECK_THAT(
        saidOf(gap),
        Catch::EndsWith(": the last measurement is 2.01 mm, outside its limits (at most 2 mm)"));
}
