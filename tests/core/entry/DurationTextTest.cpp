// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/DurationText.h"

#include <catch2/catch.hpp>

namespace lastrivet::entry {

TEST_CASE("Durations are read in every way in which people write them")
{
    CHECK(parseDuration("2h15") == Minutes{135});
    CHECK(parseDuration("2 h 15") == Minutes{135});
    CHECK(parseDuration("2h 15m") == Minutes{135});
    CHECK(parseDuration("2 hours") == Minutes{120});
    CHECK(parseDuration("1:30") == Minutes{90});
    CHECK(parseDuration("90m") == Minutes{90});
    CHECK(parseDuration("90 min") == Minutes{90});
    CHECK(parseDuration(".5h") == Minutes{30});
    CHECK(parseDuration("1,5 h") == Minutes{90});
    CHECK(parseDuration("0.25H") == Minutes{15});
    CHECK(parseDuration("53 h 30") == Minutes{3210});
    CHECK(parseDuration("2 Std 15 Min") == Minutes{135});
    CHECK(parseDuration("2 Std. 15 Min.") == Minutes{135});
    CHECK(parseDuration("90 Min.") == Minutes{90});
    CHECK(parseDuration("2h.") == Minutes{120});
    CHECK_FALSE(parseDuration("14:30.").has_value());
    CHECK_FALSE(parseDuration("9 m.").has_value());
    CHECK(parseDuration("1 Stunde") == Minutes{60});
    CHECK(parseDuration("2 heures") == Minutes{120});
    CHECK(parseDuration("45 mn") == Minutes{45});
    CHECK(parseDuration("1h 45mn") == Minutes{105});
}

TEST_CASE("Hours and minutes may be shortened with a point, end a sentence, or be joined by a word")
{
    for (const auto text :
         {"1h30m.", "1 h 30 m.", "1 h 30 min.", "1 h. 30 min.", "1 hr. 30 mins.", "1 Std. 30 Min.",
          "1 Std. 30 m.", "1 hour, 30 minutes", "1 hour and 30 minutes", "1 h et 30 min",
          "1 Stunde und 30 Minuten", "1 heure 30 minutes"}) {
        INFO(text);
        CHECK(parseDuration(text) == Minutes{90});
    }
    // "drilled 1 h. 30 rivets", "between 1 h and 30".
    for (const auto text :
         {"1 h. 30", "1 h and 30", "1 h, 30", "30m.", "1:30m.", "1: and 30 min"}) {
        INFO(text);
        CHECK_FALSE(parseDuration(text).has_value());
    }
    const EntryWords words("LA drilled 1 h. 30 rivets");
    const LengthRead read = readLength(words, 2, words.count());
    CHECK(read.minutes == 60);
    CHECK(read.words == 2);
}

TEST_CASE("Half hours and quarters are read as they are said")
{
    CHECK(parseDuration("half an hour") == Minutes{30});
    CHECK(parseDuration("eine halbe Stunde") == Minutes{30});
    CHECK(parseDuration("dreiviertel Stunde") == Minutes{45});
    CHECK(parseDuration("anderthalb Stunden") == Minutes{90});
    CHECK(parseDuration("une demi-heure") == Minutes{30});
    CHECK(parseDuration("un quart d’heure") == Minutes{15});
    CHECK(parseDuration("une heure et demie") == Minutes{90});
    CHECK(parseDuration("2 heures et demie") == Minutes{150});
    CHECK(parseDuration("1h et quart") == Minutes{75});
    CHECK(parseDuration("1 hour and a half") == Minutes{90});
    CHECK(parseDuration("2 and a half hours") == Minutes{150});
    CHECK(parseDuration("2 und eine halbe Stunde") == Minutes{150});
    CHECK(parseDuration("3 viertel Stunde") == Minutes{45});
    CHECK_FALSE(parseDuration("2 and a half").has_value());
    CHECK_FALSE(parseDuration("half").has_value());
    CHECK_FALSE(parseDuration("eine Stunde früher").has_value());
}

TEST_CASE("Hours and minutes are read as they are said in words")
{
    for (const auto text : {"two hours", "zwei Stunden", "Zwei Std.", "deux heures", "TWO HOURS"}) {
        INFO(text);
        CHECK(parseDuration(text) == Minutes{120});
    }
    for (const auto text :
         {"dreieinhalb Stunden", "drei und eine halbe Stunde", "three and a half hours",
          "trois heures et demie", "three hours thirty", "drei Stunden und dreißig Minuten",
          "trois heures trente", "3 hours thirty minutes"}) {
        INFO(text);
        CHECK(parseDuration(text) == Minutes{210});
    }
    CHECK(parseDuration("an hour") == Minutes{60});
    CHECK(parseDuration("une heure") == Minutes{60});
    CHECK(parseDuration("an hour and a half") == Minutes{90});
    CHECK(parseDuration("twelve hours") == Minutes{720});
    CHECK(parseDuration("zwölf Stunden") == Minutes{720});
    CHECK(parseDuration("fünfundvierzig Minuten") == Minutes{45});
    CHECK(parseDuration("quarante-cinq minutes") == Minutes{45});
    CHECK(parseDuration("sept heures dix minutes") == Minutes{430});
    for (const auto text :
         {"two", "two hours six", "two m", "two h", "fourteen hours", "sixteen minutes",
          "vingt-deux heures", "dix huit heures", "twenty two hours", "two holes", "one mine",
          "three:30", "two two hours", "one hundred minutes", "two and a half"}) {
        INFO(text);
        CHECK_FALSE(parseDuration(text).has_value());
    }
}

TEST_CASE("What is said behind another number, or as an hour of the clock, is no length of time")
{
    for (const auto line : {"à deux heures", "twenty two hours", "two or three hours",
                            "zwei bis drei Stunden", "dix huit heures", "two - three hours"}) {
        INFO(line);
        const EntryWords words(line);
        for (std::size_t i = 0; i < words.count(); ++i)
            CHECK(readLength(words, i, words.count()).words == 0);
    }
    const EntryWords words("LA dreieinhalb Stunden genietet");
    CHECK(readLength(words, 1, words.count()).minutes == 210);
    CHECK(readLength(words, 1, words.count()).words == 2);
}

TEST_CASE("Fractions of an hour are read, and never behind a number that stands apart")
{
    CHECK(parseDuration("3/4 h") == Minutes{45});
    CHECK(parseDuration("1/2 Std.") == Minutes{30});
    CHECK(parseDuration("¼ heure") == Minutes{15});
    CHECK(parseDuration("½h") == Minutes{30});
    CHECK(parseDuration("1½ Std.") == Minutes{90});
    CHECK(parseDuration("2¾ h") == Minutes{165});
    CHECK(parseDuration("2 h ½") == Minutes{150});
    for (const auto text : {"1 1/2 h", "1 ½ h", "13/4 h", "3/4", "½", "3/4 hole", "½ min", "2/3 h"})
        CHECK_FALSE(parseDuration(text).has_value());
    const auto read = [](std::string_view line, std::size_t first) {
        const EntryWords words(line);
        return readLength(words, first, words.count());
    };
    CHECK(read("1 1/2 h", 1).words == 0);
    CHECK(read("rib 1 ½ h", 2).words == 0);
    CHECK(read("LW-R3 1/2 h", 1).minutes == 30);
}

TEST_CASE("Whatever length of time was typed is read, so that it can be told what is wrong with it")
{
    CHECK(readMinutes("-2h") == -120);
    CHECK(readMinutes("−90m") == -90);
    CHECK(readMinutes("0m") == 0);
    CHECK(readMinutes("300h") == 18'000);
    CHECK_FALSE(readMinutes("-").has_value());
    CHECK_FALSE(readMinutes("--2h").has_value());
    CHECK_FALSE(readMinutes("99999999999999999999h").has_value());
}

TEST_CASE("A number in front of a time is no part of it")
{
    for (const auto text : {"1 2h", "1  2h", "30 1h20", "2h 3 0", "1 000 min", "1. 2h", "3, 5 h"})
        CHECK_FALSE(readMinutes(text).has_value());
    const auto read = [](std::string_view line, std::size_t first) {
        const EntryWords words(line);
        return readLength(words, first, words.count());
    };
    CHECK(read("rib 1 2h", 1).words == 0);
    CHECK(read("rib 1 2h", 2).minutes == 120);
    CHECK(read("1 2 h 15", 1).minutes == 135);
    CHECK(readMinutes("2 std. 15 min") == 135);
}

TEST_CASE("No duration is read without a unit, from 60 minutes on beside hours, at zero or below, "
          "or from 100 hours on")
{
    for (const auto text : {"", "2", "h", "1:60", "2h75", "-2h", "0m", "0h00", "100h", "1.5",
                            "1:", "2h15x", "99999999999999999999m", "1.2345678h", "nan h"})
        CHECK_FALSE(parseDuration(text).has_value());
}

} // namespace lastrivet::entry
