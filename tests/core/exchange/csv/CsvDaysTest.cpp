// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvDays.h"

#include <catch2/catch.hpp>

namespace lastrivet::exchange {

namespace {

std::string rewritten(std::string cell, DayOrder order)
{
    CsvTable table{{"Date", "What"}, {{std::move(cell), "1/2/2026"}}};
    rewriteDays(table, RecordType::WorkSession, {"began", "note"}, order);
    CHECK(table.rows[0][1] == "1/2/2026");
    return table.rows[0][0];
}

} // namespace

TEST_CASE("Days of a list become ISO by the order in which the list writes them")
{
    CHECK(rewritten("3/4/2026", DayOrder::MonthDayYear) == "2026-03-04");
    CHECK(rewritten("3/4/2026", DayOrder::DayMonthYear) == "2026-04-03");
    CHECK(rewritten(" 14.03.2026 09:30", DayOrder::DayMonthYear) == "2026-03-14 09:30");
    CHECK(rewritten("2026-03-14", DayOrder::YearMonthDay) == "2026-03-14");
}

TEST_CASE("What is no day in that order stays, to be refused by name")
{
    CHECK(rewritten("14.03.26", DayOrder::DayMonthYear) == "14.03.26");
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
