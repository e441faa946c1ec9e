// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvExport.h"
#include "core/exchange/DocumentWriter.h"
#include "tests/support/ProjectBuilder.h"
#include "tests/support/RandomRecords.h"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <filesystem>
#include <sstream>

using namespace lastrivet;
using namespace lastrivet::exchange;
using namespace lastrivet::test;

TEST_CASE("A list has a header, a row per record, lists as JSON")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing, left");
    project.session(wing, "2026-03-14T10:00", 90);
    std::ostringstream out;
    writeCsv(project.records, RecordType::WorkSession, out);
    CHECK(
        out.str() ==
        "id,began,approximate,minutes,component_id,step_id,squawk_id,kind,place,changed_inspected,"
        "workers,source,note,withdrawn_on,withdrawn_why\r\n"
        "3,2026-03-14T10:00,false,90,2,,,other,,,\"[{\"\"person_id\"\":1,\"\"paid\"\":false}]\",,,,"
        "\r\n");
}

TEST_CASE("What begins a formula in any spreadsheet gets an apostrophe, and loses it again")
{
    for (const std::string_view text :
         {"=1+1", "'=1+1", "''@x", "\uFF1D1+1", "\uFF20x", "+1", "-2", "\tx"}) {
        const std::string cell = csvCell(text);
        INFO(cell);
        const auto bare = cell.starts_with('"') ? cell.substr(1, cell.size() - 2) : cell;
        CHECK(bare == "'" + std::string(text));
        CHECK(withoutApostrophe(bare) == text);
    }
    for (const std::string_view text : {"a=b", "'tis", "'", "1-2", ""}) {
        CHECK(csvCell(text) == text);
        CHECK(withoutApostrophe(text) == text);
    }
    // Where semicolons or tabs part cells, the formula would stand in one of its own.
    CHECK(csvCell("rivets;=1+1") == "\"rivets;=1+1\"");
    CHECK(csvCell("rivets\t=1+1") == "\"rivets\t=1+1\"");
}

TEST_CASE("A spreadsheet runs no text as a formula, and numbers stay numbers")
{
    ProjectBuilder project;
    const auto wing = project.part("=HYPERLINK(\"http://x\")");
    project.change(wing, [](Component &c) {
        c.position = -5;
        c.code = "+1";
        c.zone = "-2";
        c.place = "@x";
        c.shelf = "\tx";
        c.note = "a=b";
    });
    std::ostringstream out;
    writeCsv(project.records, RecordType::Component, out);
    CHECK(out.str().ends_with(
        "\r\n2,,-5,'+1,\"'=HYPERLINK(\"\"http://x\"\")\",part,,,,'-2,,'@x,\"'\tx\",,"
        "a=b,,\r\n"));
}

// The csv module of Python's standard library is the independent reader of the lists.
TEST_CASE("Another program's CSV reader finds every value of every record")
{
    const auto folder = std::filesystem::temp_directory_path() / "lastrivet-csv-test";
    std::filesystem::create_directories(folder);
    const auto records = RandomRecords(5, 8).all();
    writeDocumentFile(records, folder / "document.json");
    writeCsvFolder(records, folder / "lists");
    const auto command = std::string("'") + LASTRIVET_PYTHON +
                         "' '" LASTRIVET_SOURCE "/tests/reference/check_csv.py' '" +
                         folder.string() + "'";
    CHECK(std::system(command.c_str()) == 0);
    std::filesystem::remove_all(folder);
}
