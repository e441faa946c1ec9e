// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A box nobody recorded anything about is told so until the first step, work or picture")
{
    RuleBench bench(readiness::Rule::ThinRecord);
    CHECK(bench.should(bench.box, "2026-03-10"));
    const auto session = bench.session(bench.rib, "2026-03-10", 10);
    CHECK(bench.should(bench.box, "2026-03-09"));
    CHECK(bench.quiet(bench.box, "2026-03-10"));
    bench.withdraw(session);
    CHECK(bench.should(bench.box, "2026-03-10"));
}
