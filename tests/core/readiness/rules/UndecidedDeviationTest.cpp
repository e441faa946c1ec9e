// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A deviation keeps the box open from raising it to its decision")
{
    RuleBench bench(readiness::Rule::UndecidedDeviation);
    const auto deviation = bench.deviation(bench.rib, "2026-03-10");
    bench.change(deviation, [&](Deviation &d) {
        d.decided_on = on("2026-03-12");
        d.decision = Decision::Approved;
        d.decided_by = bench.builder;
        d.basis = "Letter";
    });
    CHECK(bench.quiet(deviation, "2026-03-09"));
    CHECK(bench.must(deviation, "2026-03-10"));
    CHECK(bench.must(deviation, "2026-03-11"));
    CHECK(bench.quiet(deviation, "2026-03-12"));
}
