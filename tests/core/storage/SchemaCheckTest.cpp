// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/SchemaCheck.h"

#include "core/base/Error.h"
#include "core/verify/Verification.h"
#include "tests/support/TestProject.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using Catch::Contains;

namespace {

/// Says why the project cannot be opened; empty when it can.
std::string complaintOf(const test::TestProject &project, bool readOnly)
{
    try {
        project.openAgain(readOnly);
        return {};
    } catch (const UnreadableInput &complaint) {
        return complaint.what();
    }
}

} // namespace

TEST_CASE("A project with a planted trigger or index is not written, and verify names it")
{
    test::TestProject project;
    project.part("Wing");
    project.close();
    const auto [statement, name] = GENERATE(table<std::string, std::string>({
        {"CREATE TRIGGER tidy AFTER INSERT ON component BEGIN DELETE FROM squawk; END", "tidy"},
        {"CREATE UNIQUE INDEX one_name ON component(name)", "one_name"},
        {"PRAGMA writable_schema=ON; INSERT INTO sqlite_schema VALUES ('trigger', "
         "'sqlite_hidden', 'component', 0, 'CREATE TRIGGER sqlite_hidden AFTER INSERT ON component "
         "BEGIN DELETE FROM squawk; END')",
         "sqlite_hidden"},
        {"DROP TRIGGER journal_is_never_changed", "journal_is_never_changed"},
    }));
    project.tamper(statement);
    CHECK_THAT(complaintOf(project, false), Contains(name));
    const auto findings = verify(project.folder()).findings;
    REQUIRE_FALSE(findings.empty());
    CHECK_THAT(findings.front().text, Contains(name));
}

TEST_CASE("A trigger on a view keeps a project from being written, too")
{
    test::TestProject project;
    project.close();
    project.tamper("CREATE VIEW v AS SELECT 1; "
                   "CREATE TRIGGER hidden INSTEAD OF INSERT ON v BEGIN DELETE FROM journal; END");
    CHECK_THAT(complaintOf(project, false), Contains("hidden"));
    CHECK(complaintOf(project, true).empty());
}

TEST_CASE("A project whose tables were altered is not read")
{
    test::TestProject project;
    project.close();
    const auto *statement = GENERATE(
        "ALTER TABLE component RENAME TO hidden; CREATE VIEW component AS SELECT * FROM hidden",
        "ALTER TABLE component ADD COLUMN planted TEXT",
        "PRAGMA foreign_keys=OFF; DROP TABLE squawk",
        "DROP TABLE search; CREATE TABLE search(title, body)",
        "PRAGMA writable_schema=ON; UPDATE sqlite_schema SET sql=replace(sql, 'INTEGER', 'TEXT') "
        "WHERE name='component'");
    project.tamper(statement);
    CHECK_FALSE(complaintOf(project, true).empty());
    CHECK_FALSE(complaintOf(project, false).empty());
}

TEST_CASE("Further tables, views and what SQLite keeps for itself are left alone")
{
    test::TestProject project;
    project.part("Wing");
    project.close();
    project.tamper("CREATE TABLE my_list(a); CREATE VIEW parts AS SELECT name FROM component; "
                   "CREATE VIEW names AS SELECT * FROM parts; ANALYZE");
    CHECK(complaintOf(project, true).empty());
    CHECK(complaintOf(project, false).empty());
}
