// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/backup/Backup.h"
#include "core/base/Error.h"
#include "core/storage/WriterLock.h"
#include "core/verify/Verification.h"
#include "tests/support/Shelved.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using test::read;
using test::Shelved;
using test::write;
namespace fs = std::filesystem;

TEST_CASE("A photograph that was undone comes back with a restored project")
{
    Shelved shelved;
    shelved.photo("photos/a.jpg", "a");
    shelved.photo("photos/b.jpg", "b");
    REQUIRE(shelved.project()->undo());
    shelved.backUp();
    const fs::path to = shelved.shelf() / "Again.lastrivet";
    shelved.restore(shelved.place(), to);
    const auto again = Project::open(to, {&shelved.project().clock(), {}, false});
    REQUIRE(again->redo());
    CHECK(verify(to).findings.empty());
}

TEST_CASE("A restored project is the one that was backed up, and only goes into a new folder")
{
    Shelved shelved;
    shelved.photo("photos/a.jpg", "a");
    shelved.backUp();
    const fs::path to = shelved.shelf() / "Again.lastrivet";
    const auto report = shelved.restore(shelved.place(), to);
    CHECK(report.files_copied == 1);
    CHECK(verify(to).findings.empty());
    const auto again = Project::open(to, {&shelved.project().clock(), {}, false});
    CHECK(*again->records() == *shelved.project()->records());
    CHECK(again->journalHash() == shelved.project()->journalHash());
    CHECK_FALSE(again->isReadOnly());
    CHECK_THROWS_AS(shelved.restore(shelved.place(), to), NotWritable);
}

TEST_CASE("A project that somebody named as an unfinished one is not taken for what a run left")
{
    Shelved shelved;
    shelved.backUp();
    const fs::path to = shelved.shelf() / "Again.lastrivet";
    const fs::path other = shelved.shelf() / "Again.lastrivet.unfinished";
    shelved.restore(shelved.place(), other);
    CHECK_THROWS_WITH(shelved.restore(shelved.place(), to), Catch::Contains("is in the way"));
    CHECK(verify(other).findings.empty());
    CHECK_FALSE(fs::exists(to));
}

TEST_CASE("What an interrupted run left goes, whether or not it was whole by then")
{
    Shelved shelved;
    shelved.backUp();
    const fs::path to = shelved.shelf() / "Again.lastrivet";
    const fs::path left = shelved.shelf() / "Again.lastrivet.unfinished";
    const bool isWhole = GENERATE(false, true);
    if (isWhole)
        shelved.restore(shelved.place(), left);
    write(left / ".tmp-1-restoring", "");
    write(left / "photos/left.jpg", "left");
    shelved.restore(shelved.place(), to);
    CHECK_FALSE(fs::exists(left));
    CHECK_FALSE(fs::exists(to / "photos/left.jpg"));
    for (const auto &entry : fs::directory_iterator(to))
        CHECK(entry.path().filename().string().find("restoring") == std::string::npos);
    CHECK(verify(to).findings.empty());
}

TEST_CASE("An earlier database among a backup's copies can be restored, with the files")
{
    Shelved shelved;
    shelved.photo("photos/a.jpg", "a");
    shelved.backUp();
    const auto earlier = shelved.project()->records();
    shelved.photo("photos/b.jpg", "b");
    shelved.backUp();
    const auto copy = fs::directory_iterator(shelved.place() / "backups")->path();
    const fs::path to = shelved.shelf() / "Earlier.lastrivet";
    shelved.restore(copy, to);
    CHECK(*Project::open(to, {&shelved.project().clock(), {}, true})->records() == *earlier);
    CHECK(read(to / "photos/a.jpg") == "a");
    CHECK_FALSE(fs::exists(to / "photos/b.jpg"));
}

TEST_CASE("A project's own database file is restored with what its log holds, and with its files")
{
    Shelved shelved;
    shelved.photo("photos/a.jpg", "a");
    // The project is open: the newest changes stand in the log beside the file.
    REQUIRE(fs::file_size(shelved.project().folder() / "records.db-wal") > 0);
    const fs::path to = shelved.shelf() / "Again.lastrivet";
    const auto report = shelved.restore(shelved.project().database(), to);
    CHECK(report.isWhole());
    CHECK(report.files_copied == 1);
    const auto again = Project::open(to, {&shelved.project().clock(), {}, true});
    CHECK(*again->records() == *shelved.project()->records());
    CHECK(read(to / "photos/a.jpg") == "a");
    CHECK_THROWS_AS(shelved.restore(shelved.project().database(),
                                    shelved.project().folder() / "documents/Inside"),
                    NotWritable);
}

TEST_CASE("From a single database a photograph that was undone comes back too")
{
    Shelved shelved;
    shelved.photo("photos/a.jpg", "a");
    REQUIRE(shelved.project()->undo());
    const fs::path to = shelved.shelf() / "Again.lastrivet";
    CHECK(shelved.restore(shelved.project().database(), to).files_copied == 1);
    const auto again = Project::open(to, {&shelved.project().clock(), {}, false});
    REQUIRE(again->redo());
    CHECK(verify(to).findings.empty());
}

TEST_CASE("A database that was put aside can be restored beside where it lies")
{
    Shelved shelved;
    shelved.photo("photos/a.jpg", "a");
    shelved.backUp();
    const fs::path aside = shelved.shelf() / "desk/records-old.db";
    fs::create_directories(aside.parent_path());
    fs::copy_file(shelved.place() / "records.db", aside);
    const fs::path to = shelved.shelf() / "desk/Again.lastrivet";
    const auto report = shelved.restore(aside, to);
    CHECK(report.missing == std::vector<std::string>{"photos/a.jpg"});
    const auto again = Project::open(to, {&shelved.project().clock(), {}, true});
    CHECK(*again->records() == *shelved.project()->records());
}

TEST_CASE("What is no backup leaves no folder behind")
{
    Shelved shelved;
    const fs::path to = shelved.shelf() / "New.lastrivet";
    write(shelved.shelf() / "text.db", "no database at all");
    CHECK_THROWS_AS(shelved.restore(shelved.shelf() / "text.db", to), Fault);
    CHECK_THROWS_AS(shelved.restore(shelved.shelf() / "nowhere", to), Fault);
    CHECK_FALSE(fs::exists(to));
}

TEST_CASE("What another program is restoring just now is not taken for a leftover")
{
    Shelved shelved;
    shelved.backUp();
    const fs::path to = shelved.shelf() / "Again.lastrivet";
    const fs::path left = shelved.shelf() / "Again.lastrivet.unfinished";
    write(left / ".tmp-1-restoring", "");
    const auto held =
        storage::WriterLock::take(left / "records.lock", shelved.project().clock().now());
    REQUIRE(held);
    CHECK_THROWS_WITH(shelved.restore(shelved.place(), to), Catch::Contains("is in the way"));
    CHECK(fs::exists(left / ".tmp-1-restoring"));
}
