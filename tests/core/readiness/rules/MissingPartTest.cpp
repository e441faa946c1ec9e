// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Sentences.h"
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A line is short until enough good parts have been received")
{
    RuleBench bench(readiness::Rule::MissingPart);
    const auto line = bench.partLine(bench.rib, "Bracket", 4);
    CHECK(bench.must(line, "2026-03-01"));
    bench.change(line, [](PartLine &l) {
        l.received_on = on("2026-03-10");
        l.received_quantity = 4;
    });
    CHECK(bench.must(line, "2026-03-09"));
    CHECK(bench.quiet(line, "2026-03-10"));
    bench.change(line, [](PartLine &l) { l.damaged_quantity = 1; });
    CHECK(bench.must(line, "2026-03-10"));
    bench.change(line, [](PartLine &l) { l.received_quantity = 5; });
    CHECK(bench.quiet(line, "2026-03-10"));
}

TEST_CASE("A line says how many are missing, and when it was counted without its day")
{
    RuleBench bench(readiness::Rule::MissingPart);
    const auto line = bench.partLine(bench.rib, "Bracket", 4);
    const auto said = [&](const char *asOf = "2026-03-10") {
        return english(readiness::sentence(*bench.about(line, asOf), bench.records));
    };
    CHECK(said() == "Bracket: not received yet");
    bench.change(line, [](PartLine &l) { l.received_quantity = 4; });
    CHECK(said() == "Bracket: counted, but the day it came is not on record");
    bench.change(line, [](PartLine &l) {
        l.received_on = on("2026-03-10");
        l.damaged_quantity = 1;
    });
    CHECK(said() == "Bracket: 1 of 4 missing or damaged");
    // Of the day before, and of a closing of that day, that is not so.
    CHECK(said("2026-03-09") == "Bracket: not received yet");
    bench.change(line, [](PartLine &l) { l.damaged_quantity = 0; });
    CHECK(said("2026-03-09") == "Bracket: not received yet");
}
