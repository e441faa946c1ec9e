// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Journal.h"
#include "core/storage/JournalSearch.h"
#include "tests/support/TestProject.h"

#include <sqlite3.h>

#include <catch2/catch.hpp>

using namespace lastrivet;

namespace {

/// A project whose import changed far more than fits on a page of the database.
void importSteps(test::TestProject &project)
{
    const auto wing = project.part("Wing");
    project.change(
        "Import",
        [&](Edit &edit) {
            for (int i = 0; i < 2000; ++i) {
                Step step;
                step.component_id = wing;
                step.title = "Rib " + std::to_string(i) + ", " + std::string(100, 'x');
                edit.put(step);
            }
        },
        ChangeKind::Import);
    project.part("Tail");
    project.close();
}

storage::Database reading(const test::TestProject &project)
{
    return {project.database(), storage::Database::Access::ReadOnly,
            storage::Database::Safety::WriteAhead};
}

int pagesRead(const storage::Database &database)
{
    int now = 0;
    int none = 0;
    sqlite3_db_status(database.sql().getHandle(), SQLITE_DBSTATUS_CACHE_MISS, &now, &none, 0);
    return now;
}

} // namespace

TEST_CASE("The lines of a journal are its entries without their hashes")
{
    test::TestProject project;
    importSteps(project);
    auto database = reading(project);
    const storage::Journal journal(database);
    const auto lines = journal.lines();
    const auto entries = journal.entries();
    REQUIRE(lines.size() == entries.size());
    for (std::size_t i = 0; i < lines.size(); ++i) {
        CHECK(lines[i].seq == entries[i].seq);
        CHECK(lines[i].change_id == entries[i].change_id);
        CHECK(lines[i].stamp == entries[i].stamp);
        CHECK(lines[i].kind == entries[i].kind);
        CHECK(lines[i].who == entries[i].who);
        CHECK(lines[i].label == entries[i].label);
    }
    const auto behind = journal.entries(entries[1].seq);
    REQUIRE(behind.size() == entries.size() - 2);
    CHECK(behind.front().hash == entries[2].hash);
    CHECK(journal.entries(entries.back().seq).empty());
    REQUIRE(journal.newest());
    CHECK(journal.newest()->change_id == entries.back().change_id);
    CHECK(journal.newestHash() == entries.back().hash);
    CHECK(journal.oldestHash() == entries.front().hash);
}

TEST_CASE("Whoever reads the lines of a journal does not read through its changes")
{
    test::TestProject project;
    importSteps(project);
    auto database = reading(project);
    const storage::Journal journal(database);
    CHECK(journal.lines().size() == 4);
    const int forLines = pagesRead(database);
    CHECK(journal.entries().size() == 4);
    CHECK(pagesRead(database) - forLines > 4 * forLines);
}

TEST_CASE("Other rules are a change of the project, which its history finds")
{
    test::TestProject project;
    auto rules = project->profile();
    rules.name = "Only an inspector accepts late";
    project.change("Rules", [&](Edit &edit) { edit.useProfile(rules); });
    const auto seq = project->journal().back().seq;
    project.part("Tail");
    project.close();
    const auto rows = storage::rowsTouching(reading(project), {RecordRef{RecordType::Project, 1}});
    REQUIRE_FALSE(rows.empty());
    CHECK(rows.back() == seq);
}
