// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvDays.h"

#include <catch2/catch.hpp>

namespace lastrivet::exchange {

namespace {

std::string rewritten(std::string cell, DayOrder order)
{
    CsvTable table{{"Date", "What"}, {{std::move(cell), "1/2/2026"}}};
    rewriteDays(table, RecordType::WorkSession, {"began", "note"}, order,
                *Moment::parse("2026-03-14"));
    CHECK(table.rows[0][1] == "1/2/2026");
    return table.rows[0][0];
}

std::optional<DayOrder> shown(const std::vector<std::string> &days)
{
    CsvTable table{{"Date", "What"}, {}};
    for (const std::string &day : days)
        table.rows.push_back({day, "31/12/2026"});
    return orderShown(table, RecordType::WorkSession, {"began", "note"});
}

} // namespace

TEST_CASE("The days of a whole column show in which order they are written")
{
    CHECK(shown({"3/4/2026", "14/3/2026", ""}) == DayOrder::DayMonthYear);
    CHECK(shown({"3/4/2026", "3/14/26"}) == DayOrder::MonthDayYear);
    CHECK(shown({"3.4.2026"}) == DayOrder::DayMonthYear);
    CHECK(shown({"14-3-2026"}) == DayOrder::DayMonthYear);
    CHECK(shown({"2026-03-14", "2026/3/4", "soon"}) == DayOrder::YearMonthDay);
    CHECK(shown({"2026-03-14", "14/3/2026 09:30"}) == DayOrder::DayMonthYear);
    // Either way, no way, or perhaps with the year in front.
    CHECK_FALSE(shown({"3/4/2026", "5/6/2026"}).has_value());
    CHECK_FALSE(shown({"14/3/2026", "3/14/2026"}).has_value());
    CHECK_FALSE(shown({"26-03-14"}).has_value());
    CHECK_FALSE(shown({"14/14/2026"}).has_value());
}

TEST_CASE("A year of two figures in a list is the nearest that ends so")
{
    CHECK(rewritten("14.03.26", DayOrder::DayMonthYear) == "2026-03-14");
    CHECK(rewritten("3/14/99", DayOrder::MonthDayYear) == "1999-03-14");
    CHECK(rewritten("14.03.2", DayOrder::DayMonthYear) == "14.03.2");
    CHECK(rewritten("14.03.026", DayOrder::DayMonthYear) == "14.03.026");
}

TEST_CASE("Days of a list become ISO by the order in which the list writes them")
{
    CHECK(rewritten("3/4/2026", DayOrder::MonthDayYear) == "2026-03-04");
    CHECK(rewritten("3/4/2026", DayOrder::DayMonthYear) == "2026-04-03");
    CHECK(rewritten(" 14.03.2026 09:30", DayOrder::DayMonthYear) == "2026-03-14 09:30");
    CHECK(rewritten("2026-03-14", DayOrder::YearMonthDay) == "2026-03-14");
}

TEST_CASE("What is no day in that order stays, to be refused by name")
{
    CHECK(rewritten("March 14", DayOrder::MonthDayYear) == "March 14");
    CHECK(rewritten("31/02/2026", DayOrder::DayMonthYear) == "31/02/2026");
    CHECK(rewritten("14/03/2026 09:30", DayOrder::MonthDayYear) == "14/03/2026 09:30");
    CHECK(rewritten("", DayOrder::MonthDayYear).empty());
    CHECK(rewritten("2026-03-14", DayOrder::DayMonthYear) == "2026-03-14");
}

TEST_CASE("The years that a day of a list may have begin with 1900")
{
    CHECK(rewritten("1/2/1900", DayOrder::MonthDayYear) == "1900-01-02");
    CHECK(rewritten("1/2/1899", DayOrder::MonthDayYear) == "1/2/1899");
}

} // namespace lastrivet::exchange
