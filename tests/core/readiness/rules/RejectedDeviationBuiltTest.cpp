// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("What was rejected must not stay built")
{
    RuleBench bench(readiness::Rule::RejectedDeviationBuilt);
    const auto deviation = bench.deviation(bench.rib, "2026-03-01");
    bench.change(deviation, [&](Deviation &d) {
        d.built_on = on("2026-03-01");
        d.decided_on = on("2026-03-10");
        d.decision = Decision::Rejected;
        d.decided_by = bench.builder;
        d.basis = "Too weak";
        d.undone_on = on("2026-03-12");
    });
    CHECK(bench.quiet(deviation, "2026-03-09"));
    CHECK(bench.must(deviation, "2026-03-10"));
    CHECK(bench.must(deviation, "2026-03-11"));
    CHECK(bench.quiet(deviation, "2026-03-12"));
    bench.change(deviation, [](Deviation &d) { d.decision = Decision::Approved; });
    CHECK(bench.quiet(deviation, "2026-03-10"));
}

TEST_CASE("What was rejected before it was built keeps the box open once it is built")
{
    RuleBench bench(readiness::Rule::RejectedDeviationBuilt);
    const auto deviation = bench.deviation(bench.rib, "2026-03-01");
    bench.change(deviation, [](Deviation &d) {
        d.decided_on = on("2026-03-10");
        d.decision = Decision::Rejected;
    });
    CHECK(bench.quiet(deviation, "2026-03-20"));
    bench.change(deviation, [](Deviation &d) { d.built_on = on("2026-03-12"); });
    CHECK(bench.quiet(deviation, "2026-03-11"));
    CHECK(bench.must(deviation, "2026-03-12"));
}
