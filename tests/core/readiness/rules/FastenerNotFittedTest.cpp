// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A bolt keeps the box open until the day it is fitted")
{
    RuleBench bench(readiness::Rule::FastenerNotFitted);
    const auto bolt = bench.fastener(bench.rib, "Spar root");
    bench.change(bolt, [](Fastener &f) { f.fitted_on = on("2026-03-10"); });
    CHECK(bench.must(bolt, "2026-03-09"));
    CHECK(bench.quiet(bolt, "2026-03-10"));
}

TEST_CASE("A planned bolt exists from its plan's day, a removed one no more")
{
    RuleBench bench(readiness::Rule::FastenerNotFitted);
    const auto bolt = bench.fastener(bench.rib, "Spar root");
    bench.change(bolt, [](Fastener &f) {
        f.planned_on = on("2026-03-05");
        f.removed_on = on("2026-03-10");
        f.removed_why = "Wrong grip";
    });
    CHECK(bench.quiet(bolt, "2026-03-04"));
    CHECK(bench.must(bolt, "2026-03-05"));
    CHECK(bench.quiet(bolt, "2026-03-10"));
}

TEST_CASE("A bolt elsewhere, withdrawn, or set through the skin afterwards does not matter")
{
    RuleBench bench(readiness::Rule::FastenerNotFitted);
    const auto elsewhere = bench.fastener(bench.fuselage, "Longeron");
    const auto withdrawn = bench.fastener(bench.rib, "Spar root");
    const auto later = bench.fastener(bench.rib, "Inspection panel");
    bench.withdraw(withdrawn);
    bench.change(later, [&](Fastener &f) { f.may_follow = {bench.box}; });
    CHECK(bench.quiet(elsewhere, "2026-07-01"));
    CHECK(bench.quiet(withdrawn, "2026-03-01"));
    CHECK(bench.quiet(later, "2026-07-01"));
}
