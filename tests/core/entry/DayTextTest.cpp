// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/DayText.h"

#include <catch2/catch.hpp>

namespace lastrivet::entry {

namespace {

std::string read(std::string_view text)
{
    const auto day = parseDayText(text, *Moment::parse("2026-03-14")); // a Saturday
    return day ? day->text() : "none";
}

} // namespace

TEST_CASE("A day is read as people say it, never later than today")
{
    CHECK(read("today") == "2026-03-14");
    CHECK(read("Yesterday") == "2026-03-13");
    CHECK(read("wed") == "2026-03-11");
    CHECK(read("Saturday") == "2026-03-07");
    CHECK(read("14 Mar") == "2026-03-14");
    CHECK(read("15 Mar") == "2025-03-15");
    CHECK(read("Mar 3") == "2026-03-03");
    CHECK(read("3 march 2024") == "2024-03-03");
    CHECK(read("29 Feb") == "2024-02-29");
    CHECK(read("2026-01-31") == "2026-01-31");
    CHECK(read("2026-01-31T17:05") == "2026-01-31T17:05");
}

TEST_CASE("A day that does not exist is none")
{
    CHECK(read("") == "none");
    CHECK(read("31 Apr") == "none");
    CHECK(read("2026-02-29") == "none");
    CHECK(read("3 Mar please") == "none");
    CHECK(read("32 Mar") == "none");
}

TEST_CASE("A clock time has two digits of minutes")
{
    CHECK(parseClock("9:15") == 555);
    CHECK(parseClock("23:59") == 1439);
    CHECK_FALSE(parseClock("24:00").has_value());
    CHECK_FALSE(parseClock("9:5").has_value());
    CHECK_FALSE(parseClock("915").has_value());
}

} // namespace lastrivet::entry
