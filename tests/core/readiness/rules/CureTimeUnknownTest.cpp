// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A use of a curing lot without a cure time is advice from the day of use")
{
    RuleBench bench(readiness::Rule::CureTimeUnknown);
    const auto sealant = bench.lot("Sealant");
    bench.change(sealant, [](MaterialLot &lot) { lot.cures = true; });
    const auto use = bench.materialUse(bench.rib, sealant, "2026-03-10");
    CHECK(bench.quiet(use, "2026-03-09"));
    CHECK(bench.should(use, "2026-03-10"));
    bench.change(use, [](MaterialUse &u) { u.cure_minutes = Minutes{60}; });
    CHECK(bench.quiet(use, "2026-03-10"));
}

TEST_CASE("A lot that does not cure needs no cure time")
{
    RuleBench bench(readiness::Rule::CureTimeUnknown);
    CHECK(
        bench.quiet(bench.materialUse(bench.rib, bench.lot("Primer"), "2026-03-10"), "2026-03-10"));
}
