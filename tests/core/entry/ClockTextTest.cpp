// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/ClockText.h"

#include <catch2/catch.hpp>

namespace lastrivet::entry {

namespace {

/// "from+lasted/words" in minutes; "none".
std::string read(std::string_view line)
{
    const auto clock = readClock(EntryWords(line), 0);
    if (!clock)
        return "none";
    return std::to_string(clock->from) +
           (clock->lasted ? "+" + std::to_string(clock->lasted->count()) : "") + "/" +
           std::to_string(clock->words);
}

} // namespace

TEST_CASE("A clock time has two digits of minutes, or am or pm")
{
    CHECK(parseClock("9:15") == 555);
    CHECK(parseClock("23:59") == 1439);
    CHECK(parseClock("9h15") == 555);
    CHECK(parseClock("7pm") == 19 * 60);
    CHECK(parseClock("7:30am") == 450);
    CHECK(parseClock("12am") == 0);
    CHECK(parseClock("12pm") == 720);
    for (const auto text : {"24:00", "9:5", "915", "9:60", "13pm", "0pm", "", ":", "am", "9:155"})
        CHECK_FALSE(parseClock(text).has_value());
}

TEST_CASE("A span of the clock is read with any dash, or in words")
{
    CHECK(read("19:00-21:15") == "1140+135/1");
    CHECK(read("19:00–21:15 LA") == "1140+135/1");
    CHECK(read("19:00 - 21:15") == "1140+135/3");
    CHECK(read("from 19:00 to 21:15") == "1140+135/4");
    CHECK(read("von 19:00 bis 21:15") == "1140+135/4");
    CHECK(read("de 19h00 à 21h15") == "1140+135/4");
    CHECK(read("7pm-9:15pm") == "1140+135/1");
    CHECK(read("22:30-0:15") == "1350+105/1");
    CHECK(read("at 9:15") == "555/2");
}

TEST_CASE("An hour needs no minutes where German and French say that it is one")
{
    CHECK(read("à 14h") == "840/2");
    CHECK(read("um 14 Uhr") == "840/3");
    CHECK(read("ab 9:30 Uhr") == "570/3");
    CHECK(read("de 9h à 11h") == "540+120/4");
    CHECK(read("von 9 bis 11:30 Uhr") == "540+150/5");
    CHECK(read("9-11 Uhr") == "540+120/2");
    // A length of time, or nothing.
    for (const auto text : {"9h", "2h à 3h", "de 2h", "um 14", "um 25 Uhr", "um Uhr", "2h - 3h"})
        CHECK(read(text) == "none");
}

TEST_CASE("What is no clock time is left alone")
{
    for (const auto text : {"12-3", "1:30", "at noon", "at", "9:15-9:15", "9:15-25:00", "LW-R3"})
        CHECK(read(text) == "none");
}

} // namespace lastrivet::entry
