// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A torqued bolt without torque paint is advice")
{
    RuleBench bench(readiness::Rule::UnmarkedFastener);
    const auto bolt = bench.fastener(bench.rib, "Spar root");
    bench.change(bolt, [](Fastener &f) {
        f.fitted_on = f.torqued_on = on("2026-03-10");
        f.marked_on = on("2026-03-12");
    });
    CHECK(bench.quiet(bolt, "2026-03-09"));
    CHECK(bench.should(bolt, "2026-03-10"));
    CHECK(bench.should(bolt, "2026-03-11"));
    CHECK(bench.quiet(bolt, "2026-03-12"));
}
