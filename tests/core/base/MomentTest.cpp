// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Moment.h"
#include "core/base/Clock.h"

#include <catch2/catch.hpp>

#include <functional>
#include <type_traits>

using namespace lastrivet;

namespace {
Moment moment(std::string_view text)
{
    return Moment::parse(text).value();
}
} // namespace

TEST_CASE("A moment reads ISO 8601 days and minutes and nothing else")
{
    CHECK(moment("2026-03-14").text() == "2026-03-14");
    CHECK(moment("2026-03-14T07:05").text() == "2026-03-14T07:05");
    CHECK(moment("2024-02-29").text() == "2024-02-29");
    for (const char *wrong :
         {"", "2026-02-29", "2026-3-14", "2026-03-14 07:05", "2026-03-14T7:05", "2026-03-14T24:00",
          "2026-03-14T07:60", "1899-12-31", "2200-01-01", "2026-03-14T07:05Z", "x026-03-14"})
        CHECK_FALSE(Moment::parse(wrong));
    CHECK(Moment::parse("1900-01-01"));
    CHECK(Moment::parse("2199-12-31T23:59"));
}

TEST_CASE("A day without time is neither before nor after the times of that day")
{
    CHECK(after(moment("2026-03-15"), moment("2026-03-14T23:59")));
    CHECK(after(moment("2026-03-14T10:01"), moment("2026-03-14T10:00")));
    CHECK_FALSE(after(moment("2026-03-14T10:00"), moment("2026-03-14T10:00")));
    CHECK_FALSE(after(moment("2026-03-14"), moment("2026-03-14T10:00")));
    CHECK_FALSE(after(moment("2026-03-14T10:00"), moment("2026-03-14")));
    CHECK_FALSE(after(moment("2026-03-14"), moment("2026-03-14")));
    CHECK_FALSE(after(moment("2026-03-14T23:59"), moment("2026-03-15")));
}

TEST_CASE("What has happened by a moment is set, and not after it")
{
    const auto noon = moment("2026-03-14T12:00");
    CHECK_FALSE(happened(std::nullopt, noon));
    CHECK(happened(moment("2026-03-13T23:00"), noon));
    CHECK(happened(noon, noon));
    CHECK(happened(moment("2026-03-14"), noon));
    CHECK_FALSE(happened(moment("2026-03-14T12:01"), noon));
    CHECK_FALSE(happened(moment("2026-03-15"), noon));
    // Asked of a day, all of it has happened.
    CHECK(happened(moment("2026-03-14T23:59"), moment("2026-03-14")));
}

TEST_CASE("Moments have no order of their own, since a day ties with times that do not tie")
{
    static_assert(std::is_invocable_v<std::less<>, int, int>);
    static_assert(!std::is_invocable_v<std::less<>, Moment, Moment>);
    const auto day = moment("2026-03-14");
    const auto morning = moment("2026-03-14T09:00");
    const auto evening = moment("2026-03-14T18:00");
    CHECK_FALSE((after(day, morning) || after(morning, day)));
    CHECK_FALSE((after(day, evening) || after(evening, day)));
    CHECK(after(evening, morning));
    // In lists they stand as their texts do.
    for (const auto first : {day, morning, evening}) {
        for (const auto second : {day, morning, evening, moment("2025-12-31T23:59")})
            CHECK(sortsBefore(first, second) == (first.text() < second.text()));
    }
}

TEST_CASE("Minutes carry a moment over midnight and month's end")
{
    CHECK(moment("2026-02-28T23:50").plusMinutes(20)->text() == "2026-03-01T00:10");
    CHECK(moment("2026-03-01T00:10").plusMinutes(-20)->text() == "2026-02-28T23:50");
    CHECK_FALSE(moment("2199-12-31T23:50").plusMinutes(20));
    CHECK_FALSE(moment("1900-01-01T00:10").plusMinutes(-20));
    CHECK(moment("2024-02-28").plusDays(1)->text() == "2024-02-29");
    CHECK(moment("2026-03-14T07:05").plusDays(-14)->text() == "2026-02-28T07:05");
    CHECK_FALSE(moment("2199-12-31").plusDays(1));
}

TEST_CASE("A sum on the wall clock knows no summer time")
{
    // In Toronto the clock went from two to three in the night of 8 March 2026.
    CHECK(moment("2026-03-08T01:30").plusMinutes(60)->text() == "2026-03-08T02:30");
}

TEST_CASE("Universal time becomes workshop time by the IANA zone, summer time included")
{
    using namespace std::chrono;
    const sys_days january = year{2026} / 1 / 15;
    const sys_days july = year{2026} / 7 / 15;
    CHECK(localMoment(january + hours{12}, "America/Toronto").text() == "2026-01-15T07:00");
    CHECK(localMoment(july + hours{12}, "America/Toronto").text() == "2026-07-15T08:00");
    CHECK(localMoment(july + hours{2}, "America/Toronto").text() == "2026-07-14T22:00");
    CHECK(inZone(moment("2026-07-15T14:00"), 120, "America/Toronto").text() == "2026-07-15T08:00");
}

TEST_CASE("A stamp beyond all calendars is no day that records know")
{
    using Time = std::chrono::sys_time<std::chrono::milliseconds>;
    for (const Time stamp : {Time::min(), Time::max(), Time(std::chrono::days{400 * 366})})
        CHECK(localMoment(stamp, "America/Toronto").text() == "1970-01-01");
}
