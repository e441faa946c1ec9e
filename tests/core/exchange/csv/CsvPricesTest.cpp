// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvPrices.h"

#include "core/exchange/csv/CsvImport.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

#include <cstdint>

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

TEST_CASE("Prices as people write them become minor units, each in its currency")
{
    auto table = read("Item;Qty;Price\nRib;4;\"1.250,50\"\nNut;8;0,95 USD\nPin;1;\nBag;1;free\n");
    auto columns = columnsByHeader(table, RecordType::PartLine);
    REQUIRE(columns == CsvColumns{"name", "quantity", "unit_price"});
    rewritePrices(table, columns, "CAD");
    CHECK(columns == CsvColumns{"name", "quantity", "unit_price", "currency"});
    CHECK(table.rows[0][2] == "125050");
    CHECK(table.rows[0][3] == "CAD");
    CHECK(table.rows[1][2] == "95");
    CHECK(table.rows[1][3] == "USD");
    CHECK(table.rows[2][3].empty());
    CHECK(table.rows[3][2] == "free");
}

TEST_CASE("Prices that take the usual currency are told where others of the list name another")
{
    const auto told = [](const std::string &rows) {
        auto table = read("name;quantity;Price\n" + rows);
        auto columns = columnsByHeader(table, RecordType::PartLine);
        const auto message = rewritePrices(table, columns, "CAD");
        return message ? english(*message) : std::string();
    };
    CHECK(told("Rib;4;12,50 €\nNut;8;0,95\nPin;1;3,10\n") ==
          "Prices without a currency (2) are taken in CAD, though others of the list are in EUR.");
    CHECK(told("Rib;4;12,50 €\nNut;8;USD 0,95\nPin;1;3,10\n") ==
          "Prices without a currency (1) are taken in CAD, though others of the list are in EUR, "
          "USD.");
    CHECK(told("Rib;4;12,50 CAD\nNut;8;0,95\n").empty());
    CHECK(told("Rib;4;12,50 €\nNut;8;0,95 EUR\n").empty());
    CHECK(told("Rib;4;12,50\nNut;8;\n").empty());
}

TEST_CASE("A row's own currency says how its price is read; minor units of an export stay")
{
    auto table = read("name,quantity,Preis,currency\nRib,1,1200,JPY\nNut,1,1200,\n");
    auto columns = columnsByHeader(table, RecordType::PartLine);
    rewritePrices(table, columns, "EUR");
    CHECK(table.rows[0][2] == "1200");
    CHECK(table.rows[1][2] == "120000");
    CHECK(table.rows[1][3] == "EUR");

    auto exported = read("name,quantity,unit_price,currency\nRib,1,1250,EUR\n");
    columns = columnsByHeader(exported, RecordType::PartLine);
    rewritePrices(exported, columns, "EUR");
    CHECK(exported.rows[0][2] == "1250");
}

TEST_CASE("Whether a price is a thousand is told by the others of its column, or it is no price")
{
    const auto price = [](const std::string &others) {
        auto table = read("name;quantity;Price\nMotor;1;1.789\n" + others);
        auto columns = columnsByHeader(table, RecordType::PartLine);
        rewritePrices(table, columns, "EUR");
        return table.rows[0][2];
    };
    CHECK(price("Nut;1;0,95\nPin;1;12\n") == "178900");
    CHECK(price("Nut;1;0.95\n") == "1.789");
    CHECK(price("Nut;1;12\n") == "1.789");
    CHECK(price("Nut;1;0,95\nPin;1;0.95\n") == "1.789");
}

TEST_CASE("Where no price tells whether a stop parts thousands, the sign of the person does")
{
    const auto price = [](const std::string &others, DecimalSign own) {
        auto table = read("name;quantity;Price\nMotor;1;18.500\n" + others);
        auto columns = columnsByHeader(table, RecordType::PartLine);
        rewritePrices(table, columns, "EUR", own);
        return table.rows[0][2];
    };
    CHECK(price("Nut;1;12\n", DecimalSign::Comma) == "1850000");
    // A price of more decimals than the currency has is none.
    CHECK(price("Nut;1;12\n", DecimalSign::Point) == "18.500");
    CHECK(price("Nut;1;0,95\n", DecimalSign::Point) == "1850000");
    CHECK(price("Nut;1;0,95\nPin;1;0.95\n", DecimalSign::Comma) == "18.500");
}

TEST_CASE("A whole number whose currency nobody knows is not taken for minor units")
{
    auto table = read("name,quantity,Price\nRib,1,12\nNut,1,-12\n");
    auto columns = columnsByHeader(table, RecordType::PartLine);
    rewritePrices(table, columns, "");
    CHECK(table.rows[0][2] == "12 ?");
    CHECK(table.rows[1][2] == "-12 ?");
    CHECK(english(table.refusals.at({0, 2})) ==
          "“12” names no currency; write it behind, in three letters.");
}

TEST_CASE("A price that may be read in two ways is refused with both of them")
{
    auto table = read("name;quantity;Price\nMotor;1;1.789\nNut;1;12\n");
    auto columns = columnsByHeader(table, RecordType::PartLine);
    rewritePrices(table, columns, "EUR");
    const test::ProjectBuilder project;
    std::int64_t last = 1000;
    const auto plan = planCsv(table, RecordType::PartLine, columns, project.records,
                              project.profile, [&last] { return ++last; });
    REQUIRE(plan.rows.size() == 2);
    REQUIRE(plan.rows[0].errors.size() == 1);
    CHECK(english(plan.rows[0].errors[0].what) ==
          "“1.789” may be 1789 or 1.789; write 1789 when that is meant.");
    CHECK(plan.rows[1].errors.empty());
}

TEST_CASE("A list with other columns lacks what a packing line must have")
{
    const auto known = read("Bezeichnung,Menge,Teilenummer\nRippe,4,R-6\n");
    const auto columns = columnsByHeader(known, RecordType::PartLine);
    CHECK(columns == CsvColumns{"name", "quantity", "part_number"});
    CHECK(unfilled(RecordType::PartLine, columns).empty());
    const auto other = read("Latitude,Longitude\n47,11\n");
    CHECK(unfilled(RecordType::PartLine, columnsByHeader(other, RecordType::PartLine)) ==
          std::vector<std::string_view>{"name", "quantity"});
}
