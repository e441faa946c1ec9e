// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

#include <algorithm>

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

TEST_CASE("One step, or one picture of the inside, is a record; a bolt or a squawk alone is none")
{
    RuleBench bench(readiness::Rule::ThinRecord);
    bench.squawk(bench.rib, "2026-03-01");
    bench.fastener(bench.rib, "Root");
    CHECK(bench.should(bench.box, "2026-03-10"));
    const auto step = bench.step(bench.rib, "Deburr");
    CHECK(bench.quiet(bench.box, "2026-03-10"));
    bench.change(step, [](Step &s) { s.planned_on = on("2026-03-11"); });
    CHECK(bench.should(bench.box, "2026-03-10"));
    bench.photo("2026-03-10", {{RecordType::Component, bench.rib.value()}});
    CHECK(bench.quiet(bench.box, "2026-03-10"));
    // What lies beside the box says nothing about its inside.
    const auto other = bench.closing(bench.fuselage);
    const auto answer = bench.ask("2026-03-10");
    const auto &blockers = answer.closing(other)->blockers;
    CHECK(std::any_of(blockers.begin(), blockers.end(), [](const auto &blocker) {
        return blocker.rule == readiness::Rule::ThinRecord;
    }));
}
