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
    // The afternoon of the one is that of the other, as long as it comes before it.
    CHECK(read("7:00-9:15pm LA") == "1140+135/1");
    CHECK(read("7:00-9:15 pm LA") == "1140+135/2");
    CHECK(read("7:00 - 9:15pm") == "1140+135/3");
    CHECK(read("7:00 - 9:15 pm LA") == "1140+135/4");
    CHECK(read("from 7:00 to 9:15pm") == "1140+135/4");
    CHECK(read("from 7:00 to 9:15 pm") == "1140+135/5");
    CHECK(read("11:00-1:15pm") == "660+135/1");
    CHECK(read("11:00-1:15am") == "1380+135/1");
    CHECK(read("7:00pm-9:15pm") == "1140+135/1");
    CHECK(read("7:00am-9:15pm") == "420+855/1");
    CHECK(read("9:15-11:30am") == "555+135/1");
    CHECK(read("12:15-2:30pm") == "735+135/1");
    CHECK(read("9:15-11:30 am Freitag") == "555+135/1");
    CHECK(read("13:15-15:30 pm") == "795+135/1");
    CHECK(read("at 9:15 pm") == "1275/3");
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

TEST_CASE("Minutes stand behind Uhr, behind a point in front of it, or behind a French h")
{
    CHECK(read("8 Uhr 30") == "510/3");
    CHECK(read("um 14 Uhr 30 1h20") == "870/4");
    CHECK(read("um 8.30 Uhr") == "510/3");
    CHECK(read("8 Uhr 30 bis 11 Uhr 45") == "510+195/7");
    CHECK(read("von 9 Uhr bis 11 Uhr") == "540+120/6");
    CHECK(read("9 bis 11 Uhr 45") == "540+165/5");
    CHECK(read("von 9 bis 11.30 Uhr") == "540+150/5");
    CHECK(read("8.30-11.30 Uhr") == "510+180/2");
    CHECK(read("9-11 Uhr 45") == "540+165/3");
    CHECK(read("9–11 Uhr: 45 Nieten") == "540+120/2");
    CHECK(read("à 14 h 30") == "870/4");
    CHECK(read("à 14 h 2h15") == "840/3");
    CHECK(read("de 14 h à 16 h 30") == "840+150/7");
    // The note's number, and a length of time.
    CHECK(read("um 14 Uhr: 30 Nieten") == "840/3");
    CHECK(read("um 14 Uhr 30 min") == "840/3");
    CHECK(read("à 14 h 30 min") == "840/3");
    for (const auto text : {"14 h 30", "8.30", "8.30 bis 11.30", "de 14 h 30", "um 8.75 Uhr"})
        CHECK(read(text) == "none");
}

TEST_CASE("The first hour of a span that is named as one needs no minutes")
{
    CHECK(read("from 9 to 11:30 LA") == "540+150/4");
    CHECK(read("von 9 bis 11:30") == "540+150/4");
    CHECK(read("de 9 à 11h30") == "540+150/4");
    CHECK(read("de 9 à 11 h 30") == "540+150/6");
    // Nobody knows which half of the day is meant.
    for (const auto text :
         {"from 9 to 1:30", "from 1 to 3pm", "from 9 to 11:30 pm", "9 to 11:30", "from 9 to 11"})
        CHECK(read(text) == "none");
}

TEST_CASE("A dash behind a French hour parts two times of day, or one from a length")
{
    CHECK(read("à 14 h - 16 h") == "840+120/6");
    CHECK(read("à 14 h – 16 h 30 LA") == "840+150/7");
    CHECK(read("à 14h - 16h") == "840+120/4");
    CHECK(read("à 14h30 - 16h") == "870+90/4");
    CHECK(read("à 14 h - 2 h") == "840/3");
    CHECK(read("à 14 h - 2h15") == "840/3");
    CHECK(read("at 1:15 - 2h") == "75/2");
    CHECK(read("um 8 Uhr - 10 h") == "480/3");
    CHECK(read("um 9 - 11 Uhr") == "540+120/5");
    CHECK(read("at 9:15 - 11:30") == "555+135/4");
    CHECK(read("de 14 h - 16 h") == "none");
}

TEST_CASE("What is no clock time is left alone")
{
    for (const auto text : {"12-3", "1:30", "at noon", "at", "9:15-9:15", "9:15-25:00", "LW-R3"})
        CHECK(read(text) == "none");
}

} // namespace lastrivet::entry
