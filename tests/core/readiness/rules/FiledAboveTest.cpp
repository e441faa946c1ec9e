// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("An open squawk on the whole wing may lie inside the panel, unless somebody said not")
{
    RuleBench bench(readiness::Rule::FiledAbove);
    const auto squawk = bench.squawk(bench.wing, "2026-03-10");
    CHECK(bench.quiet(squawk, "2026-03-09"));
    CHECK(bench.should(squawk, "2026-03-10"));
    bench.change(squawk, [&](Squawk &s) { s.not_inside = {bench.box}; });
    CHECK(bench.quiet(squawk, "2026-03-10"));
}

TEST_CASE("Filed inside or beside is not filed above")
{
    RuleBench bench(readiness::Rule::FiledAbove);
    CHECK(bench.quiet(bench.squawk(bench.panel, "2026-03-10"), "2026-03-10"));
    CHECK(bench.quiet(bench.squawk(bench.fuselage, "2026-03-10"), "2026-03-10"));
    const auto deviation = bench.deviation(bench.wing, "2026-03-10");
    CHECK(bench.should(deviation, "2026-03-10"));
    bench.change(deviation, [&](Deviation &d) { d.component_ids = {bench.wing, bench.rib}; });
    CHECK(bench.quiet(deviation, "2026-03-10"));
}
