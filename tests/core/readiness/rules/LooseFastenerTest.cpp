// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A fitted bolt with a torque limit stays loose until it is torqued")
{
    RuleBench bench(readiness::Rule::LooseFastener);
    const auto bolt = bench.fastener(bench.rib, "Spar root");
    bench.change(bolt, [](Fastener &f) {
        f.torque_min = 50;
        f.fitted_on = on("2026-03-10");
        f.torqued_on = on("2026-03-12");
        f.torque_value = 60;
    });
    CHECK(bench.quiet(bolt, "2026-03-09"));
    CHECK(bench.must(bolt, "2026-03-10"));
    CHECK(bench.must(bolt, "2026-03-11"));
    CHECK(bench.quiet(bolt, "2026-03-12"));
}

TEST_CASE("A screw without a limit is never loose")
{
    RuleBench bench(readiness::Rule::LooseFastener);
    const auto screw = bench.fastener(bench.rib, "Cover");
    bench.change(screw, [](Fastener &f) { f.fitted_on = on("2026-03-10"); });
    CHECK(bench.quiet(screw, "2026-03-20"));
}
