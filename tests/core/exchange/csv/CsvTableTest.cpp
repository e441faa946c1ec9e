// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvTable.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::exchange;

namespace {

using Rows = std::vector<std::vector<std::string>>;

Rows rowsOf(std::string_view text)
{
    const auto table = readCsv(text);
    REQUIRE(table);
    Rows rows{table->header};
    rows.insert(rows.end(), table->rows.begin(), table->rows.end());
    return rows;
}

std::string errorOf(std::string_view text)
{
    const auto table = readCsv(text);
    REQUIRE_FALSE(table);
    return english(table.reason().front(), "f");
}

} // namespace

// The cases are those of RFC 4180, section 2.
TEST_CASE("Rows end with or without a carriage return, the last one at the end of the text")
{
    const Rows expected{{"aaa", "bbb"}, {"zzz", "yyy"}};
    CHECK(rowsOf("aaa,bbb\r\nzzz,yyy\r\n") == expected);
    CHECK(rowsOf("aaa,bbb\r\nzzz,yyy") == expected);
    CHECK(rowsOf("aaa,bbb\nzzz,yyy\n") == expected);
    CHECK(rowsOf("aaa,bbb\rzzz,yyy") == expected);
}

TEST_CASE("Quoted cells hold separators, line ends and doubled quotation marks")
{
    CHECK(rowsOf("a,b\r\n\"x,\ny\",\"\"\"q\"\"\"\r\n") == Rows{{"a", "b"}, {"x,\ny", "\"q\""}});
    CHECK(rowsOf("a,b\n\"\", y ") == Rows{{"a", "b"}, {"", " y "}});
}

TEST_CASE("Semicolons and tabs part cells where the header has most of them")
{
    CHECK(rowsOf("a;b\n1,5;2") == Rows{{"a", "b"}, {"1,5", "2"}});
    CHECK(rowsOf("a\tb\n1\t2") == Rows{{"a", "b"}, {"1", "2"}});
}

TEST_CASE("A row may leave out its last cells, but has none too many")
{
    CHECK(rowsOf("a,b,c\n1\n\n") == Rows{{"a", "b", "c"}, {"1", "", ""}, {"", "", ""}});
    CHECK(errorOf("a,b\n1,2\n1,2,3") == "f: row 3: The row has 3 cells, but the header only 2.");
}

TEST_CASE("What is no list is told in one sentence")
{
    CHECK(errorOf("") == "f: The list is empty.");
    CHECK(errorOf(" \r\n\n") == "f: The list is empty.");
    CHECK(errorOf("a,b\n\"x,y") ==
          "f: row 2: A quotation mark opens a cell that does not end as it should.");
    CHECK(errorOf("a,b\n\"x\"y,1") ==
          "f: row 2: A quotation mark opens a cell that does not end as it should.");
    CHECK(errorOf("a\nM\xfcller") == "f: line 2: The text is no UTF-8.");
    CHECK(errorOf(std::string_view("a\nb\0c", 5)) ==
          "f: The character U+0000 is not allowed in a text.");
}

TEST_CASE("A short text of separators and line ends does not fill the memory")
{
    const std::string text = std::string(100'000, ',') + std::string(100'000, '\n');
    CHECK(errorOf(text) == "f: row 51: The list has more than 5000000 cells.");
    const std::string separators(5'000'001, ',');
    CHECK(errorOf(separators) == "f: row 1: The list has more than 5000000 cells.");
}

TEST_CASE("Rows can be named in another language")
{
    const auto cells = readCsv("a,b\n1,2\n1,2,3");
    REQUIRE_FALSE(cells);
    CHECK(cells.reason().front().place == "row 3");
    CHECK(placeOf(cells.reason().front()) == Message{"row {0}", {"3"}});
    const auto bytes = readCsv("a\nM\xfcller");
    REQUIRE_FALSE(bytes);
    CHECK(placeOf(bytes.reason().front()) == Message{"line {0}", {"2"}});
    CHECK(english(placeOf({"/steps/0", {}, {"It is wrong.", {}}})) == "/steps/0");
}
