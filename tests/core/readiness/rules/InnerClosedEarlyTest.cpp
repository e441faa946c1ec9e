// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A box inside that was closed with gaps keeps the outer one open until accepted late")
{
    RuleBench bench(readiness::Rule::InnerClosedEarly);
    const auto inner = bench.closing(bench.panel, {bench.rib});
    bench.squawk(bench.rib, "2026-03-01");
    CHECK(bench.quiet(inner, "2026-03-09"));
    bench.change(inner, [](Closing &c) {
        c.events = {{on("2026-03-10"), {}, {}, "Skin on", false}};
    });
    CHECK(bench.must(inner, "2026-03-10"));
    SignOff late;
    late.person_id = bench.builder;
    late.signed_on = on("2026-03-20");
    late.remarks = "Seen through the lightening hole";
    const auto signOff = bench.add(late);
    bench.change(inner, [&](Closing &c) { c.late_acceptances = {signOff}; });
    CHECK(bench.must(inner, "2026-03-19"));
    CHECK(bench.quiet(inner, "2026-03-20"));
}
