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
    CHECK(read("3 Mar 24") == "2024-03-03");
    CHECK(read("Dec 20 98") == "1998-12-20");
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

TEST_CASE("Days are read in German and French too")
{
    CHECK(read("heute") == "2026-03-14");
    CHECK(read("gestern") == "2026-03-13");
    CHECK(read("vorgestern") == "2026-03-12");
    CHECK(read("hier") == "2026-03-13");
    CHECK(read("avant-hier") == "2026-03-12");
    CHECK(read("aujourd'hui") == "2026-03-14");
    CHECK(read("Mittwoch") == "2026-03-11");
    CHECK(read("mercredi") == "2026-03-11");
    CHECK(read("3. März") == "2026-03-03");
    CHECK(read("24. Dez. 2025") == "2025-12-24");
    CHECK(read("3 mars") == "2026-03-03");
    CHECK(read("1 févr. 2024") == "2024-02-01");
    CHECK(read("15 août") == "2025-08-15");
    CHECK(read("1er mars") == "2026-03-01");
    CHECK(read("1er novembre 2024") == "2024-11-01");
    CHECK(read("3.3.") == "2026-03-03");
    CHECK(read("31.12.") == "2025-12-31");
    CHECK(read("1.2.2024") == "2024-02-01");
    CHECK(read("31.4.") == "none");
    CHECK(read("3.3") == "none");
}

TEST_CASE("A German day may have a year of two figures, which is the nearest that ends so")
{
    CHECK(read("3.11.25") == "2025-11-03");
    CHECK(read("03.11.27") == "2027-11-03");
    CHECK(read("1.2.99") == "1999-02-01");
    CHECK(read("1.2.24") == "2024-02-01");
    CHECK(read("01.02.24") == "2024-02-01");
    CHECK(read("29.2.25") == "none");
    CHECK(read("30.2.26") == "none");
    CHECK(read("1.2.4") == "none");
    CHECK(read("1.2.x4") == "none");
}

TEST_CASE("The part of a day goes with it, and the morning of today is not tomorrow")
{
    CHECK(read("heute Morgen") == "2026-03-14");
    CHECK(read("gestern Abend") == "2026-03-13");
    CHECK(read("Mittwoch morgen") == "2026-03-11");
    CHECK(read("morgen früh") == "2026-03-15");
    CHECK(read("hier soir") == "2026-03-13");
    CHECK(read("mercredi après-midi") == "2026-03-11");
    CHECK(read("yesterday evening") == "2026-03-13");
    CHECK(read("12 mars matin") == "2026-03-12");
    CHECK(read("12. März 2025 abends") == "2025-03-12");
    CHECK(read("12.3. abends") == "2026-03-12");
    CHECK(read("morgen morgen morgen") == "none");
}

TEST_CASE("A shortened weekday has a point behind it, or is another word")
{
    CHECK(read("So.") == "2026-03-08");
    CHECK(read("Mi.") == "2026-03-11");
    CHECK(read("sam.") == "2026-03-07");
    CHECK(read("jeu. matin") == "2026-03-12");
    for (const auto text : {"so", "do", "mi", "sam", "mar."})
        CHECK(read(text) == "none");
}

TEST_CASE("A day beyond the first or last of the calendar is none")
{
    const auto first = *Moment::parse("1900-01-01");
    const auto last = *Moment::parse("2199-12-31");
    CHECK_FALSE(parseDayText("yesterday", first).has_value());
    CHECK_FALSE(parseDayText("vorgestern", first).has_value());
    CHECK_FALSE(parseDayText("monday", first).has_value());
    CHECK(parseDayText("today", last) == last);
    CHECK_FALSE(parseDayText("demain", last).has_value());
}

TEST_CASE("Days are counted back and called the last in all three languages")
{
    for (const auto text : {"last Wednesday", "last wed", "letzten Mittwoch", "Mercredi dernier"})
        CHECK(read(text) == "2026-03-11");
    for (const auto text : {"2 days ago", "vor 2 Tagen", "il y a 2 jours"})
        CHECK(read(text) == "2026-03-12");
    CHECK(read("1 day ago") == "2026-03-13");
    CHECK(read("letzten Freitag Abend") == "2026-03-13");
    for (const auto text :
         {"last", "last week", "2 days", "vor 2", "vor Tagen", "il y a", "dernier"})
        CHECK(read(text) == "none");
}

TEST_CASE("A day, a month's name and a year may be joined")
{
    for (const auto text : {"2-Mar-2026", "02-MAR-26", "2.März.2026", "2/mars/2026", "2.Mar.26"})
        CHECK(read(text) == "2026-03-02");
    for (const auto text : {"31-Feb-2026", "2-rib-2026", "2-Mar", "Mar-2-2026", "-Mar-2026", "--"})
        CHECK(read(text) == "none");
}

TEST_CASE("A day between strokes is read where only one of its numbers can be the month")
{
    CHECK(read("14/2/2026") == "2026-02-14");
    CHECK(read("2/14/2026") == "2026-02-14");
    CHECK(read("14/02/2026") == "2026-02-14");
    CHECK(read("3/3/2026") == "2026-03-03");
    for (const auto text : {"3/4/2026", "31/2/2026", "14/14/2026", "14/2/26", "14/2", "1/14/226",
                            "14/257/2026", "5/258/2026", "269/5/2026", "/14/2026", "14//2026"})
        CHECK(read(text) == "none");
}

TEST_CASE("A month with its year stands for its last day, and what lacks the year is told apart")
{
    const auto end = [](std::string_view text) {
        const auto day = parseMonthEnd(text);
        return day ? day->text() : "none";
    };
    for (const auto text :
         {"03/2027", "3/2027", "03.2027", "03-2027", "2027-03", "2027/03", "MAR 2027", "Mar. 2027",
          "march 2027", "März 2027", "MÄRZ 2027", "mars 2027", "2027 Mar", "MAR/2027"}) {
        INFO(text);
        CHECK(end(text) == "2027-03-31");
    }
    CHECK(end("02/2028") == "2028-02-29");
    CHECK(end("févr. 2027") == "2027-02-28");
    CHECK(end("Dez. 2027") == "2027-12-31");
    for (const auto text : {"03/27", "13/2027", "0/2027", "MAR 27", "2027", "2027-03-15",
                            "3 Mar 2027", "lot 2027", "2027 2027", "03/20277", ""}) {
        INFO(text);
        CHECK(end(text) == "none");
    }
    for (const auto text : {"Mar 27", "27 MAR", "27. März", "1er mars", "27.3."})
        CHECK(lacksYear(text));
    for (const auto text :
         {"27 Mar 2027", "27 Mar 27", "MAR 2027", "2027-03-27", "today", "27.3.27"})
        CHECK_FALSE(lacksYear(text));
}

TEST_CASE("Days to come are read where they are said outright")
{
    CHECK(read("tomorrow") == "2026-03-15");
    CHECK(read("morgen") == "2026-03-15");
    CHECK(read("3 Mar 2030") == "2030-03-03");
    CHECK(read("2026-03-15") == "2026-03-15");
}

} // namespace lastrivet::entry
