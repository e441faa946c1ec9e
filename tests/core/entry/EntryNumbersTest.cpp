// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/EntryLine.h"

#include "tests/core/entry/EntryBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A number that begins the note is no minutes of the time in front of the colon")
{
    const EntryBench bench;
    const auto session = bench.one("LA 2h: 30 rivets");
    CHECK(session.minutes == Minutes{120});
    CHECK(session.note == "30 rivets");
    CHECK(bench.one("LA 2h 30: 5 rivets").minutes == Minutes{150});
    CHECK(bench.one("LA 1h : 15 min of it cleaning").minutes == Minutes{60});
}

TEST_CASE("A number that begins the note ticks no step")
{
    const auto reading = EntryBench().read("1h LA done 7: 12-3 cleaned");
    CHECK(reading.steps_done == IdSet<Step>{Id<Step>{43}});
    REQUIRE(reading.sessions.size() == 1);
    CHECK(reading.sessions.front().note == "12-3 cleaned");
}
