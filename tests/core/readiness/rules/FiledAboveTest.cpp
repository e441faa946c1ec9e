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

TEST_CASE("Above, what is settled, ruled out or says itself what it needs opened is not told")
{
    RuleBench bench(readiness::Rule::FiledAbove);
    const auto squawk = bench.squawk(bench.wing, "2026-03-01");
    bench.change(squawk, [](Squawk &s) { s.verified_on = on("2026-03-10"); });
    CHECK(bench.should(squawk, "2026-03-09"));
    CHECK(bench.quiet(squawk, "2026-03-10"));
    const auto reached = bench.squawk(bench.wing, "2026-03-01");
    bench.change(reached, [&](Squawk &s) { s.needs_access_to = {bench.fuselage}; });
    CHECK(bench.quiet(reached, "2026-03-09"));
    const auto bulletin = bench.bulletin(bench.wing, "2026-03-01");
    CHECK(bench.should(bulletin, "2026-03-09"));
    bench.change(bulletin, [&](Bulletin &b) { b.not_inside = {bench.box}; });
    CHECK(bench.quiet(bulletin, "2026-03-09"));
    bench.change(bulletin, [](Bulletin &b) {
        b.not_inside.clear();
        b.applies = false;
    });
    CHECK(bench.quiet(bulletin, "2026-03-09"));
}

TEST_CASE("Above, a deviation is told while undecided, and again when it is built though rejected")
{
    RuleBench bench(readiness::Rule::FiledAbove);
    const auto deviation = bench.deviation(bench.wing, "2026-03-01");
    bench.change(deviation, [](Deviation &d) {
        d.decided_on = on("2026-03-05");
        d.decision = Decision::Rejected;
        d.built_on = on("2026-03-10");
        d.undone_on = on("2026-03-15");
    });
    CHECK(bench.should(deviation, "2026-03-04"));
    CHECK(bench.quiet(deviation, "2026-03-09"));
    CHECK(bench.should(deviation, "2026-03-10"));
    CHECK(bench.quiet(deviation, "2026-03-15"));
    bench.change(deviation, [&](Deviation &d) { d.not_inside = {bench.box}; });
    CHECK(bench.quiet(deviation, "2026-03-10"));
}
