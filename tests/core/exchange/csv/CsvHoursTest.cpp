// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvHours.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::exchange;

namespace {

CsvTable read(std::string_view text)
{
    const auto table = readCsv(text);
    REQUIRE(table);
    return *table;
}

} // namespace

TEST_CASE("Bare numbers below hours are hours, and what names its unit stays")
{
    auto table = read("Datum;Bauteil;Stunden\n2026-03-01;LW;1,5\n2026-03-02;LW;2\n"
                      "2026-03-03;LW;45 min\n2026-03-04;LW;\n2026-03-05;LW;1.234,5\n");
    const auto columns = columnsByHeader(table, RecordType::WorkSession);
    REQUIRE(columns == CsvColumns{"began", "component_id", "minutes"});
    rewriteHours(table, columns);
    CHECK(table.rows[0][2] == "1,5h");
    CHECK(table.rows[1][2] == "2h");
    CHECK(table.rows[2][2] == "45 min");
    CHECK(table.rows[3][2].empty());
    CHECK(table.rows[4][2] == "1.234,5");
}

TEST_CASE("A third of an hour is read with as many digits as spreadsheets write")
{
    auto table = read("date,hours\n2026-03-01,1.33333333333333\n2026-03-02,\"0,6666667\"\n"
                      "2026-03-03,1.25\n2026-03-04,2.\n");
    rewriteHours(table, columnsByHeader(table, RecordType::WorkSession));
    CHECK(table.rows[0][1] == "1.3333h");
    CHECK(table.rows[1][1] == "0,6666h");
    CHECK(table.rows[2][1] == "1.25h");
    CHECK(table.rows[3][1] == "2.h");
}

TEST_CASE("Hours are hours however the words of their header are joined")
{
    for (const std::string_view header :
         {"title,Estimate hours", "title,estimate-hours", "title, ESTIMATE_HOURS"}) {
        INFO(header);
        auto table = read(std::string(header) + "\nDrill,2\n");
        const auto columns = columnsByHeader(table, RecordType::Step);
        REQUIRE(columns == CsvColumns{"title", "estimate_minutes"});
        rewriteHours(table, columns);
        CHECK(table.rows[0][1] == "2h");
    }
}

TEST_CASE("Bare numbers below minutes stay minutes")
{
    auto table = read("date,part,minutes\n2026-03-01,LW,90\n");
    rewriteHours(table, columnsByHeader(table, RecordType::WorkSession));
    CHECK(table.rows[0][2] == "90");
}

TEST_CASE("A time of day is no length where another column says how long")
{
    for (const std::string_view header : {"date,time,part,hours", "date,hours,part,time"}) {
        const auto table = read(header);
        const auto columns = columnsByHeader(table, RecordType::WorkSession);
        for (std::size_t i = 0; i < columns.size(); ++i) {
            INFO(table.header[i]);
            CHECK((columns[i] == "minutes") == (table.header[i] == "hours"));
        }
        CHECK(doubledColumns(table, RecordType::WorkSession) == std::vector<std::string>{"time"});
    }
    CHECK(columnsByHeader(read("date,time"), RecordType::WorkSession) ==
          CsvColumns{"began", "minutes"});
}

TEST_CASE("A lone time is how long, unless it holds times of the day")
{
    const auto taken = [](std::string_view text) {
        const auto table = read(text);
        const auto columns = columnsByHeader(table, RecordType::WorkSession);
        CHECK(doubledColumns(table, RecordType::WorkSession).empty());
        CHECK((columns[1] == "minutes") ==
              (timeColumn(table, columns, RecordType::WorkSession) == TimeColumn::IsLength));
        return timeColumn(table, columns, RecordType::WorkSession);
    };
    CHECK(taken("date,time,part\n2026-03-01,1:30,LW\n2026-03-02,,LW\n2026-03-03,12:15,LW\n") ==
          TimeColumn::IsLength);
    CHECK(taken("date,Time,part\n2026-03-01,8:30,LW\n2026-03-02,,LW\n2026-03-03, 19:30,LW\n") ==
          TimeColumn::IsClock);
    CHECK(taken("date,time\n2026-03-01,19:30:00\n") == TimeColumn::IsClock);
    CHECK(taken("date,time\n2026-03-01,19:30\n2026-03-02,27:15\n") == TimeColumn::IsLength);
    CHECK(taken("date,time\n2026-03-01,19:30\n2026-03-02,45 min\n") == TimeColumn::IsLength);
    CHECK(taken("date,part\n2026-03-01,LW\n") == TimeColumn::None);
    const auto both = read("date,time,hours\n2026-03-01,19:30,2\n");
    const auto columns = columnsByHeader(both, RecordType::WorkSession);
    CHECK(columns == CsvColumns{"began", "", "minutes"});
    CHECK(timeColumn(both, columns, RecordType::WorkSession) == TimeColumn::None);
}
