// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/TimerProgress.h"

#include <catch2/catch.hpp>

namespace lastrivet {

namespace {

Moment at(std::string_view clock)
{
    return *Moment::parse("2026-03-14T" + std::string(clock));
}

} // namespace

TEST_CASE("A timer counts what was worked and leaves pauses out")
{
    TimerProgress timer = freshProgress(at("18:00"));
    CHECK(workedBy(timer, at("18:25")) == Minutes{25});
    pause(timer, at("18:25"));
    CHECK(workedBy(timer, at("19:00")) == Minutes{25});
    resume(timer, at("19:00"));
    CHECK(workedBy(timer, at("19:05")) == Minutes{30});
    CHECK(workedBy(timer, *Moment::parse("2026-03-15T00:10")) == Minutes{335});
}

TEST_CASE("A jump of the clock is a gap, small steps are none")
{
    TimerProgress timer = freshProgress(at("18:00"));
    look(timer, at("18:01"));
    look(timer, at("18:06"));
    CHECK_FALSE(timer.gap_began.has_value());
    look(timer, at("18:12"));
    CHECK(timer.gap_began == at("18:06"));
    CHECK(timer.gaps == Minutes{6});
    look(timer, at("18:30"));
    CHECK(timer.gap_began == at("18:06"));
    CHECK(timer.gaps == Minutes{24});
    CHECK(workedBy(timer, at("18:40")) == Minutes{40});
    leaveGapsOut(timer);
    CHECK(workedBy(timer, at("18:40")) == Minutes{16});
    CHECK_FALSE(timer.gap_began.has_value());
}

TEST_CASE("While it is paused no gap is one, and a clock set back takes nothing away")
{
    TimerProgress timer = freshProgress(at("18:00"));
    pause(timer, at("18:10"));
    look(timer, at("23:00"));
    CHECK_FALSE(timer.gap_began.has_value());
    resume(timer, at("23:00"));
    look(timer, at("22:00"));
    CHECK(workedBy(timer, at("22:00")) == Minutes{10});
}

TEST_CASE("What was worked before the clock was set back stays worked")
{
    TimerProgress timer = freshProgress(at("01:30"));
    for (const auto *clock : {"01:35", "01:40", "01:45", "01:50", "01:55", "01:59"})
        look(timer, at(clock));
    look(timer, at("01:00")); // the end of summer time
    CHECK(workedBy(timer, at("01:00")) == Minutes{29});
    CHECK(workedBy(timer, at("01:30")) == Minutes{59});
    CHECK_FALSE(timer.gap_began.has_value());
    pause(timer, at("01:30"));
    CHECK(workedBy(timer, at("01:30")) == Minutes{59});
}

TEST_CASE("A timer survives as text, whatever is noted in it")
{
    TimerProgress timer = freshProgress(at("18:00"));
    timer.note = "LW-R3: drilled part 4, “skin”";
    look(timer, at("19:00"));
    pause(timer, at("19:30"));
    CHECK(progressFromText(toText(timer)) == timer);
    resume(timer, at("20:00"));
    leaveGapsOut(timer);
    CHECK(progressFromText(toText(timer)) == timer);
    timer.note = "began 1999\nworked 9000";
    CHECK(progressFromText(toText(timer))->worked == timer.worked);
}

TEST_CASE("A text that is no timer is none")
{
    for (const auto text : {"", "nonsense", "worked 5\n", "began yesterday\n", "\n\n\n"})
        CHECK_FALSE(progressFromText(text).has_value());
}

} // namespace lastrivet
