// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A failed test sample counts from the day it was broken")
{
    RuleBench bench(readiness::Rule::FailedSample);
    const auto use = bench.materialUse(bench.rib, bench.lot("Glue"), "2026-03-10");
    bench.change(use, [](MaterialUse &u) {
        u.sample = Sample::Failed;
        u.sample_on = on("2026-03-12");
    });
    CHECK(bench.quiet(use, "2026-03-11"));
    CHECK(bench.must(use, "2026-03-12"));
    bench.change(use, [](MaterialUse &u) { u.sample = Sample::Good; });
    CHECK(bench.quiet(use, "2026-03-12"));
}
