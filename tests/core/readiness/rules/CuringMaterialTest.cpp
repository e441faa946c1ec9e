// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("Sealant is wet until its last minute and cured in the next")
{
    RuleBench bench(readiness::Rule::CuringMaterial);
    const auto use = bench.materialUse(bench.rib, bench.lot("Sealant"), "2026-03-10T10:00");
    bench.change(use, [](MaterialUse &u) { u.cure_minutes = Minutes{90}; });
    CHECK(bench.quiet(use, "2026-03-10T09:59"));
    CHECK(bench.must(use, "2026-03-10T10:00"));
    CHECK(bench.must(use, "2026-03-10T11:29"));
    CHECK(bench.quiet(use, "2026-03-10T11:30"));
}

TEST_CASE("Without a time of day, use and question count as the last minute of their day")
{
    RuleBench bench(readiness::Rule::CuringMaterial);
    const auto use = bench.materialUse(bench.rib, bench.lot("Glue"), "2026-03-10");
    bench.change(use, [](MaterialUse &u) { u.cure_minutes = Minutes{1}; });
    CHECK(bench.must(use, "2026-03-10"));
    CHECK(bench.quiet(use, "2026-03-11T00:00"));
}

TEST_CASE("What the closing step itself puts on may be wet")
{
    RuleBench bench(readiness::Rule::CuringMaterial);
    const auto use = bench.materialUse(bench.rib, bench.lot("Sealant"), "2026-03-10T10:00");
    const auto close = bench.step(bench.wing, "Rivet the skin on");
    bench.change(close, [&](Step &s) { s.closes = bench.box; });
    bench.change(use, [&](MaterialUse &u) {
        u.cure_minutes = Minutes{90};
        u.step_id = close;
    });
    CHECK(bench.quiet(use, "2026-03-10T10:30"));
}

TEST_CASE("What cures in no time, or of which that is not known, is not said to be wet")
{
    RuleBench bench(readiness::Rule::CuringMaterial);
    const auto use = bench.materialUse(bench.rib, bench.lot("Sealant"), "2026-03-10");
    CHECK(bench.quiet(use, "2026-03-10"));
    bench.change(use, [](MaterialUse &u) { u.cure_minutes = Minutes{0}; });
    CHECK(bench.quiet(use, "2026-03-10"));
}
