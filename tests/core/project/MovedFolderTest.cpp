// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Error.h"
#include "core/verify/Verification.h"
#include "tests/support/TestProject.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <fstream>
#include <sstream>

using namespace lastrivet;
namespace fs = std::filesystem;

namespace {

/// A project whose folder can be put elsewhere while it is open.
struct Fixture {
    Fixture() { project.part("Wing"); }

    void requireRefused()
    {
        CHECK_FALSE(project->isInPlace());
        const auto before = project->records();
        const auto refused = project->change("Part", [](Edit &edit) {
            Component part;
            part.name = "Tail";
            edit.put(part);
        });
        REQUIRE_FALSE(refused);
        CHECK_THAT(english(refused.reason()),
                   Catch::Contains("no longer at " + project.folder().string()));
        CHECK_FALSE(project->undo());
        CHECK_THROWS_WITH(project->notePrinted("Packet"), Catch::Contains("no longer at"));
        CHECK_THROWS_AS(project->setLocalState("timer", "1"), NotWritable);
        CHECK(project->records() == before);
    }

    test::TestProject project;
    fs::path elsewhere = project.folder().parent_path() / "Moved.lastrivet";
};

} // namespace

TEST_CASE("When the folder is renamed nothing more is written, here or there, until it is back")
{
    Fixture fixture;
    fs::rename(fixture.project.folder(), fixture.elsewhere);
    fixture.requireRefused();
    CHECK_FALSE(fs::exists(fixture.project.folder()));
    CHECK(verify(fixture.elsewhere).isFaultless());
    CHECK(verify(fixture.elsewhere).journal_rows == 2);
    fs::rename(fixture.elsewhere, fixture.project.folder());
    CHECK(fixture.project->isInPlace());
    fixture.project.part("Tail");
    CHECK(verify(fixture.project.folder()).isFaultless());
}

TEST_CASE("A folder that was moved is opened where it is now, and goes on there")
{
    Fixture fixture;
    fs::rename(fixture.project.folder(), fixture.elsewhere);
    fixture.requireRefused();
    CHECK(Project::open(fixture.elsewhere, {})->isReadOnly());
    fixture.project.close();
    const auto opened = Project::open(fixture.elsewhere, fixture.project.options());
    CHECK_FALSE(opened->isReadOnly());
    CHECK(opened->undoLabel() == "Part Wing");
    REQUIRE(opened->undo());
    CHECK(verify(fixture.elsewhere).isFaultless());
}

TEST_CASE("Another project in the old place is not taken for the one that was opened")
{
    Fixture fixture;
    fs::rename(fixture.project.folder(), fixture.elsewhere);
    fs::copy(fixture.elsewhere, fixture.project.folder(), fs::copy_options::recursive);
    std::ostringstream before;
    before << std::ifstream(fixture.project.database(), std::ios::binary).rdbuf();
    fixture.requireRefused();
    std::ostringstream after;
    after << std::ifstream(fixture.project.database(), std::ios::binary).rdbuf();
    CHECK(before.str() == after.str());
}

TEST_CASE("A folder that is gone, as from a disk that was pulled, is told and not made again")
{
    Fixture fixture;
    fs::remove_all(fixture.project.folder());
    fixture.requireRefused();
    CHECK_FALSE(fs::exists(fixture.project.folder()));
}

TEST_CASE("Where a second program came past the lock, the next change of the first is refused")
{
    Fixture fixture;
    fs::remove(fixture.project.folder() / "records.lock");
    const auto other = fixture.project.openAgain();
    REQUIRE_FALSE(other->isReadOnly());
    REQUIRE(other->change("Renamed", [](Edit &edit) {
        for (const auto &part : Records(edit.records()).components)
            edit.update(part.id, [](Component &wing) { wing.name = "Left wing"; });
    }));
    const auto refused = fixture.project->undo();
    REQUIRE_FALSE(refused);
    CHECK_THAT(english(refused.reason()), Catch::Contains("Another program wrote to the project"));
    // That nothing was changed is said in front of the reason by whoever tells it.
    CHECK_THAT(english(refused.reason()), !Catch::Contains("nothing was changed"));
    CHECK_THROWS_AS(fixture.project->notePrinted("Packet"), NotWritable);
    CHECK(verify(fixture.project.folder()).journal_rows == 3);
    CHECK(verify(fixture.project.folder()).isFaultless());
}

TEST_CASE("Databases that a program for keeping folders alike left there are told at opening")
{
    Fixture fixture;
    fixture.project.close();
    const auto folder = fixture.project.folder();
    const auto conflicted = "records (conflicted copy 2026-11-25).db";
    fs::copy(folder / "records.db", folder / conflicted);
    fs::copy(folder / "records.db", folder / "records.db-kims-computer");
    fs::copy(folder / "records.db", folder / "records.sync-conflict-20261125-101500-ABCDEFG.db");
    fs::copy(folder / "records.db", folder / "backups/records-20261125.db");
    fs::copy(folder / "records.db", folder / ".records.db.part");
    std::ofstream(folder / "shopping.db") << "SQLite format 3 is on the list";
    fixture.project.reopen();
    const auto &notices = fixture.project->notices();
    REQUIRE(notices.size() == 3);
    CHECK_THAT(english(notices[0]), Catch::Contains(conflicted));
    CHECK_THAT(english(notices[1]), Catch::Contains("records.db-kims-computer"));
    CHECK_THAT(english(notices[2]), Catch::Contains("sync-conflict-20261125"));
    const auto findings = verify(folder).findings;
    REQUIRE(findings.size() == 3);
    CHECK(findings[0].what == "file");
    CHECK_THAT(findings[0].text, Catch::Contains(conflicted));
}

TEST_CASE("A project that was copied in the middle of a change is read as it was before it")
{
    Fixture fixture;
    fixture.project.close();
    const auto copied = fixture.project.folder().parent_path() / "Copied.lastrivet";
    {
        // As on a network folder, where a rollback journal stands in for the write-ahead log.
        storage::Database database(fixture.project.database(), storage::Database::Access::ReadWrite,
                                   storage::Database::Safety::RollbackJournal);
        database.run("PRAGMA cache_size=1; BEGIN IMMEDIATE;"
                     R"(UPDATE "component" SET "name"='half done';)"
                     R"(WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i+1 FROM n WHERE i<2000)
                        INSERT INTO "local_state" SELECT i, hex(zeroblob(200)) FROM n)");
        fs::copy(fixture.project.folder(), copied, fs::copy_options::recursive);
        database.run("ROLLBACK");
    }
    REQUIRE(fs::file_size(copied / "records.db-journal") > 0);
    auto options = fixture.project.options();
    options.readOnly = true;
    fixture.project.reopen();
    CHECK(*Project::open(copied, options)->records() == *fixture.project->records());
    CHECK(verify(copied).isFaultless());
    REQUIRE(fs::file_size(copied / "records.db-journal") > 0);
    const auto again = Project::open(copied, fixture.project.options());
    CHECK(*again->records() == *fixture.project->records());
}

TEST_CASE("A clock that was set back is told, and the order of the journal holds")
{
    using namespace std::chrono_literals;
    Fixture fixture;
    fixture.project.clock().advance(-48h);
    fixture.project.reopen();
    const auto notice = fixture.project->clockNotice();
    REQUIRE(notice);
    CHECK_THAT(english(*notice),
               Catch::Contains("says 2026-03-12T09:00") &&
                   Catch::Contains("before the newest row of the journal (2026-03-14T09:00)"));
    fixture.project.part("Tail");
    fixture.project.part("Fin");
    const auto rows = fixture.project->journal();
    CHECK(std::ranges::is_sorted(rows, {}, &JournalEntry::stamp));
    CHECK(verify(fixture.project.folder()).isFaultless());
    fixture.project.clock().advance(49h);
    CHECK_FALSE(fixture.project->clockNotice());
}

TEST_CASE("A clock that is years ahead of the journal is told")
{
    using namespace std::chrono;
    Fixture fixture;
    fixture.project.clock().advance(years{9});
    CHECK_FALSE(fixture.project->clockNotice());
    fixture.project.clock().advance(years{2});
    REQUIRE(fixture.project->clockNotice());
    CHECK_THAT(english(*fixture.project->clockNotice()),
               Catch::Contains("the newest row of the journal is of 2026-03-14T09:00"));
}
