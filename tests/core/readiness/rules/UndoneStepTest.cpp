// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A step in the box keeps it open until done or dropped")
{
    RuleBench bench(readiness::Rule::UndoneStep);
    const auto step = bench.step(bench.rib, "Deburr");
    bench.change(step, [](Step &s) { s.done_on = on("2026-03-10"); });
    CHECK(bench.must(step, "2026-03-09"));
    CHECK(bench.quiet(step, "2026-03-10"));
    const auto dropped = bench.step(bench.rib, "Paint");
    bench.change(dropped, [](Step &s) { s.dropped_on = on("2026-03-10"); });
    CHECK(bench.must(dropped, "2026-03-09"));
    CHECK(bench.quiet(dropped, "2026-03-10"));
}

TEST_CASE("Steps elsewhere count when the closing step comes after them, through what is withdrawn")
{
    RuleBench bench(readiness::Rule::UndoneStep);
    const auto first = bench.step(bench.fuselage, "Bend the bracket");
    const auto middle = bench.step(bench.fuselage, "Prime the bracket", {first});
    const auto close = bench.step(bench.wing, "Rivet the skin on", {middle});
    CHECK(bench.quiet(first, "2026-03-10"));
    bench.change(close, [&](Step &s) { s.closes = bench.box; });
    CHECK(bench.must(first, "2026-03-10"));
    CHECK(bench.must(middle, "2026-03-10"));
    CHECK(bench.quiet(close, "2026-03-10"));
    bench.withdraw(middle);
    CHECK(bench.must(first, "2026-03-10"));
    CHECK(bench.quiet(middle, "2026-03-10"));
    bench.change(close, [](Step &s) { s.dropped_on = on("2026-03-10"); });
    CHECK(bench.quiet(first, "2026-03-10"));
}

TEST_CASE("A leak test may follow and is told while there is access")
{
    RuleBench bench(readiness::Rule::UndoneStep);
    const auto test = bench.followingStep();
    CHECK(bench.quiet(test, "2026-03-10"));
    const auto answer = bench.ask("2026-03-10");
    const RecordRef record{RecordType::Step, test.value()};
    REQUIRE(answer.last_chance.size() == 1);
    const auto &items = answer.last_chance.front().items;
    CHECK(std::find(items.begin(), items.end(), record) != items.end());
}
