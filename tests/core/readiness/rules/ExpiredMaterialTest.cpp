// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Sentences.h"
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A lot may be used on its last day, not after it, unless somebody accepts it")
{
    RuleBench bench(readiness::Rule::ExpiredMaterial);
    const auto lot = bench.lot("Resin");
    bench.change(lot, [](MaterialLot &l) { l.expires_on = on("2026-03-10"); });
    const auto onLastDay = bench.materialUse(bench.rib, lot, "2026-03-10T18:00");
    const auto late = bench.materialUse(bench.rib, lot, "2026-03-11");
    CHECK(bench.quiet(onLastDay, "2026-03-20"));
    CHECK(bench.must(late, "2026-03-11"));
    CHECK(english(readiness::sentence(*bench.about(late, "2026-03-11"), bench.records)) ==
          "Resin in Rib: used on 2026-03-11, after its lot expired on 2026-03-10");
    bench.change(late, [&](MaterialUse &u) {
        u.accepted_on = on("2026-03-15");
        u.accepted_by = bench.builder;
        u.accepted_basis = "Update test passed";
    });
    CHECK(bench.must(late, "2026-03-14"));
    CHECK(bench.quiet(late, "2026-03-15"));
}

TEST_CASE("What will be used of an old lot stands in no way before it is")
{
    RuleBench bench(readiness::Rule::ExpiredMaterial);
    const auto lot = bench.lot("Resin");
    bench.change(lot, [](MaterialLot &l) { l.expires_on = on("2026-03-01"); });
    const auto use = bench.materialUse(bench.rib, lot, "2026-03-11");
    CHECK(bench.quiet(use, "2026-03-10"));
    CHECK(bench.must(use, "2026-03-11"));
    bench.change(lot, [](MaterialLot &l) { l.expires_on.reset(); });
    CHECK(bench.quiet(use, "2026-03-11"));
}
