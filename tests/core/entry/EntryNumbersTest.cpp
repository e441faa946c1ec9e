// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/EntryLine.h"

#include "tests/core/entry/EntryBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A part's code may be typed or pasted with a dash in the place of its hyphen")
{
    const EntryBench bench;
    for (const auto *line : {"LW-R3 2h: x", "LW–R3 2h: x", "lw\u2011r3 2h: x", "2h LW−R3 : x"}) {
        INFO(line);
        const auto session = bench.one(line);
        CHECK(session.component_id == Id<Component>{11});
        CHECK(session.minutes == Minutes{120});
        CHECK(session.note == "x");
    }
    CHECK(bench.one("LA - 2h: x").component_id == Id<Component>{30});
}

TEST_CASE("A number that begins the note is no minutes of the time in front of the colon")
{
    const EntryBench bench;
    const auto session = bench.one("LA 2h: 30 rivets");
    CHECK(session.minutes == Minutes{120});
    CHECK(session.note == "30 rivets");
    CHECK(bench.one("LA 2h 30: 5 rivets").minutes == Minutes{150});
    CHECK(bench.one("LA 1h : 15 min of it cleaning").minutes == Minutes{60});
}

TEST_CASE("A number behind a comma is no minutes of the hours in front of it")
{
    const EntryBench bench;
    for (const auto *line : {"LA 2h, 12 rivets set", "LA 2 h, 12 rivets set",
                             "LA 2h; 12 rivets set", "2 Std., LA 12 rivets set"}) {
        INFO(line);
        const auto session = bench.one(line);
        CHECK(session.minutes == Minutes{120});
        CHECK(session.note == "12 rivets set");
    }
    CHECK(bench.one("LA 2h, 12 min sweeping").minutes == Minutes{132});
    CHECK(bench.one("LA 2h 12, swept").minutes == Minutes{132});
}

TEST_CASE("A day that is counted back, or called the last, begins a line as any other day does")
{
    const EntryBench bench;
    for (const auto *line :
         {"last Friday LA 2h: x", "letzten Freitag LA 2h: x", "LA 2h 1 day ago: x",
          "vendredi dernier LA 2h: x", "vor 1 Tag LA 2h: x", "il y a 1 jour LA 2h: x",
          "13/3/2026 LA 2h: x"}) {
        INFO(line);
        const auto session = bench.one(line);
        CHECK(session.began == Moment::parse("2026-03-13"));
        CHECK(session.minutes == Minutes{120});
        CHECK(session.component_id == Id<Component>{30});
        CHECK(session.note == "x");
    }
}

TEST_CASE("A number behind hours that may count what follows is asked about")
{
    const EntryBench bench;
    for (const auto *line : {"LA 2h 12 rivets set", "LA 2 h 12 Nieten gesetzt", "LA 2h 12 trous"}) {
        INFO(line);
        const auto reading = bench.read(line);
        REQUIRE(reading.problems.size() == 1);
        CHECK(english(reading.problems.front()).find("is taken for hours and minutes") !=
              std::string::npos);
        REQUIRE(reading.sessions.size() == 1);
        CHECK(reading.sessions.front().minutes == Minutes{132});
    }
    for (const auto *line : {"LA 2h 12: rivets set", "LA 2h 12 drilled", "LA 2h 12 min rivets",
                             "LA 2h, 12 rivets", "LA 2h: 12 rivets", "LA 12 rivets 2h"}) {
        INFO(line);
        CHECK(bench.read(line).problems.empty());
    }
}

TEST_CASE("One end of a span of the clock is no length of time, and is asked about")
{
    const EntryBench bench;
    for (const auto *line :
         {"LA 8 to 10:30 priming", "LA 8 - 10:30 priming", "LA 8:15 - 10 priming",
          "LA 8:15 bis 10 grundiert", "LA primed at 10:30", "LA percé à 10:30"}) {
        INFO(line);
        const auto reading = bench.read(line);
        REQUIRE(reading.sessions.size() == 1);
        CHECK_FALSE(reading.sessions.front().minutes.has_value());
        REQUIRE(reading.problems.size() == 1);
        CHECK(english(reading.problems.front()).find("may be a time of day") != std::string::npos);
    }
    CHECK(bench.one("LA 8:15 - 10:00 priming").minutes == Minutes{105});
    CHECK(bench.one("LA 2h primed at 10:30").minutes == Minutes{120});
    CHECK(bench.read("LA 2h primed at 10:30").problems.empty());
    CHECK(bench.one("LA 1:30 priming").minutes == Minutes{90});
    CHECK(bench.one("LA primed 1:30").minutes == Minutes{90});
    CHECK_FALSE(bench.one("9 to 11:30 LA: x").minutes.has_value());
}

TEST_CASE("A number that begins the note ticks no step")
{
    const auto reading = EntryBench().read("1h LA done 7: 12-3 cleaned");
    CHECK(reading.steps_done == IdSet<Step>{Id<Step>{43}});
    REQUIRE(reading.sessions.size() == 1);
    CHECK(reading.sessions.front().note == "12-3 cleaned");
}

TEST_CASE("A comma before the steps that are done does not stay at the end of the note")
{
    const EntryBench bench;
    CHECK(bench.one("1h LA: riveted, done 7").note == "riveted");
    CHECK(bench.one("1h LA : rivetée, fait 7").note == "rivetée");
    CHECK(bench.one("1h LA: riveted; done 7").note == "riveted");
    CHECK(bench.one("1h LA: riveted , done 7").note == "riveted");
    CHECK(bench.one("1h LA: riveted, done 7 cleaned").note == "riveted, cleaned");
    CHECK(bench.one("1h LA: riveted,").note == "riveted,");
}

TEST_CASE(
    "Behind hours the hour of a clock is no minutes, nor is the day of a month behind a clock")
{
    const EntryBench bench;
    const auto early = bench.one("1h 8 Uhr LA: x");
    CHECK(early.minutes == Minutes{60});
    CHECK(early.began == Moment::parse("2026-03-14T08:00"));
    CHECK(bench.one("2 h 14 Uhr 30 LA: x").began == Moment::parse("2026-03-14T14:30"));
    const auto french = bench.one("à 14 h 12 mars 2h LA : x");
    CHECK(french.minutes == Minutes{120});
    CHECK(french.began == Moment::parse("2026-03-12T14:00"));
    CHECK(bench.one("um 9 Uhr 10 März 1h LA: x").began == Moment::parse("2026-03-10T09:00"));
}

TEST_CASE("Minutes and an hour that a dash joins are no span of time")
{
    const auto reading = EntryBench().read("8 Uhr 15-11 Uhr 45 LA: x");
    CHECK(reading.problems.size() == 1);
    REQUIRE(reading.sessions.size() == 1);
    CHECK_FALSE(reading.sessions.front().minutes.has_value());
}

TEST_CASE("Halves of hours count with the hours in front of them, and never alone")
{
    const EntryBench bench;
    CHECK(bench.one("2 heures et demie LA percé").minutes == Minutes{150});
    CHECK(bench.one("2 and a half hours LA drilled").minutes == Minutes{150});
    CHECK(bench.one("a quarter of an hour LA: x").minutes == Minutes{15});
    CHECK(bench.one("zwei und eine halbe Stunde LA: x").minutes == Minutes{150});
    const auto written = bench.read("dreizehn und eine halbe Stunde LA: x");
    CHECK_FALSE(written.problems.empty());
    REQUIRE(written.sessions.size() == 1);
    CHECK_FALSE(written.sessions.front().minutes.has_value());
}

TEST_CASE("A time in words is taken as one in digits is, and a count behind it is asked about")
{
    const EntryBench bench;
    for (const auto *line : {"LA two hours: x", "zwei Stunden LA: x", "LA deux heures : x"}) {
        INFO(line);
        const auto reading = bench.read(line);
        CHECK(reading.problems.empty());
        REQUIRE(reading.sessions.size() == 1);
        CHECK(reading.sessions.front().minutes == Minutes{120});
        CHECK(reading.sessions.front().component_id == Id<Component>{30});
        CHECK(reading.sessions.front().note == "x");
    }
    CHECK(bench.one("LA dreieinhalb Stunden genietet").minutes == Minutes{210});
    CHECK(bench.one("LA dreieinhalb Stunden genietet").note == "genietet");
    const auto counted = bench.read("LA two hours thirty rivets set");
    REQUIRE(counted.problems.size() == 1);
    CHECK(english(counted.problems.front()).find("is taken for hours and minutes") !=
          std::string::npos);
    const auto six = bench.one("LA two hours six rivets set");
    CHECK(six.minutes == Minutes{120});
    CHECK(six.note == "six rivets set");
}

TEST_CASE("What may be a time and is read as none is asked about")
{
    const EntryBench bench;
    const auto asked = [&](const char *line) {
        const auto reading = bench.read(line);
        REQUIRE(reading.sessions.size() == 1);
        CHECK_FALSE(reading.sessions.front().minutes.has_value());
        REQUIRE_FALSE(reading.problems.empty());
        return english(reading.problems.front());
    };
    for (const auto *line : {"LA 2-3 h: x", "LA 2-3 h riveting", "LA riveting 2–3 h"}) {
        INFO(line);
        CHECK(asked(line).ends_with("h” may be the one time or the other; write one, as 2h30."));
    }
    for (const auto *line : {"LA 1300-1530: x", "LA 1300-1530 riveting", "LA riveting 1300-1530"}) {
        INFO(line);
        CHECK(asked(line) == "“1300-1530” may be a time of day; write from 8:00 to 10:30.");
    }
    for (const auto *line : {"8 am - 10 am LA: x", "8 am - 10 am LA riveting"}) {
        INFO(line);
        CHECK(asked(line) == "“8 am” may be a time of day; write from 8:00 to 10:30.");
    }
    CHECK(bench.read("LA 2h 1300-1530 riveting").problems.empty());
    CHECK(bench.read("LA riveting to drawing 12-3").problems.empty());
}

TEST_CASE("Of two lengths in a note the one that ends the line is meant, and the other is told")
{
    const EntryBench bench;
    const auto reading = bench.read("LA waited half an hour 2h");
    REQUIRE(reading.sessions.size() == 1);
    CHECK(reading.sessions.front().minutes == Minutes{120});
    CHECK(reading.sessions.front().note == "waited half an hour");
    REQUIRE(reading.problems.size() == 1);
    CHECK(english(reading.problems.front()) ==
          "“half an hour” is a second time; it goes into the note.");
    const auto within = bench.read("LA swept 20m and waited half an hour there");
    CHECK(within.sessions.front().minutes == Minutes{20});
    CHECK(within.sessions.front().note == "swept and waited half an hour there");
    CHECK(within.problems.size() == 1);
    // A helper's time is no second one, nor is what the note tells once the time was said.
    const auto helped = bench.read("LA drilled 2h with Irja 45m");
    CHECK(helped.sessions.front().minutes == Minutes{120});
    CHECK(helped.problems.empty());
    CHECK(bench.read("2h LA waited half an hour").problems.empty());
    CHECK(bench.one("2h LA waited half an hour").note == "waited half an hour");
}

TEST_CASE("A length in the note does not stand in the place of a span of the clock")
{
    const EntryBench bench;
    for (const std::string line :
         {"9:00-11:30 LA waited half an hour", "9:00-11:30 LA waited half an hour for paint",
          "von 9 bis 11:30 Uhr LA waited half an hour", "9:00 - 11:30 LA waited half an hour"}) {
        INFO(line);
        const auto reading = bench.read(line);
        REQUIRE(reading.sessions.size() == 1);
        CHECK(reading.sessions.front().minutes == Minutes{150});
        CHECK(reading.sessions.front().note.starts_with("waited half an hour"));
        REQUIRE(reading.problems.size() == 1);
        CHECK(english(reading.problems.front()) ==
              "“half an hour” is a second time; it goes into the note.");
    }
    // In front of the note it leaves the breaks out.
    CHECK(bench.one("9:00-11:30 2h LA drilled").minutes == Minutes{120});
    CHECK(bench.one("9:00-11:30 LA with Irja 45m drilled").minutes == Minutes{150});
}

TEST_CASE("A length that is longer than its span of the clock is told")
{
    const EntryBench bench;
    CHECK(bench.read("9:00-12:00 3h LA: x").problems.empty());
    const auto longer = bench.read("9:00-12:00 4h LA: x");
    REQUIRE(longer.problems.size() == 1);
    CHECK(english(longer.problems.front()) == "“4h” is longer than from the one time of day to the "
                                              "other; it is what counts.");
    CHECK(longer.sessions.front().minutes == Minutes{240});
}

TEST_CASE("The number of a chapter that is taken for a day of long ago is told")
{
    EntryBench bench;
    const auto told = bench.read("2h LA 4.2.10 skins drilled").problems;
    REQUIRE(told.size() == 1);
    CHECK(english(told.front()) == "“4.2.10” is taken for the day 2010-02-04; put the number of a "
                                   "chapter behind the colon.");
    CHECK(bench.read("2h LA 4.2.26 skins drilled").problems.empty());
    CHECK(bench.read("2h LA 4.2.2010 skins drilled").problems.empty());
    CHECK(bench.read("2h LA: 4.2.10 skins drilled").problems.empty());
    // Between its beginning and today nobody needs to be told; before it another sentence does.
    bench.records.project.started_on = Moment::parse("2009-06-01");
    CHECK(bench.read("2h LA 4.2.10 skins drilled").problems.empty());
}

TEST_CASE("Somebody who is not on record is told with both names, and takes no part's name along")
{
    const EntryBench bench;
    const auto told = [&](std::string_view line) {
        const auto problems = bench.read(line).problems;
        return problems.size() == 1 ? english(problems.front()) : std::string();
    };
    CHECK(told("2h LA with Ben Okoro: drilled") ==
          "Nobody on record is called “Ben Okoro”; it goes into the note.");
    CHECK(bench.one("2h LA with Ben Okoro: drilled").note == "with Ben Okoro: drilled");
    CHECK(told("2h with Ben Okoro LA: drilled") ==
          "Nobody on record is called “Ben Okoro”; it goes into the note.");
    CHECK(bench.one("2h with Ben Okoro LA: drilled").component_id == Id<Component>{30});
    CHECK(told("with Ben Left aileron 2h: drilled") ==
          "Nobody on record is called “Ben”; it goes into the note.");
    CHECK(bench.one("with Ben Friday 2h LA: x").began == Moment::parse("2026-03-13"));
}
