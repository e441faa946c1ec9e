// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/backup/Backup.h"
#include "core/backup/BackupChoice.h"
#include "core/backup/LastBackup.h"
#include "core/backup/OwnCopies.h"
#include "core/base/Error.h"
#include "core/storage/DatabaseCopies.h"
#include "core/verify/Verification.h"
#include "tests/support/Shelved.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace lastrivet;
using test::read;
using test::Shelved;
using test::write;
namespace fs = std::filesystem;

TEST_CASE("A backup is a whole project that verifies, made while the project is open")
{
    Shelved shelved;
    shelved.photo("photos/2026/rib.jpg", "rib");
    const auto report = shelved.backUp();
    CHECK(report.place == shelved.place());
    CHECK(report.files_copied == 1);
    CHECK(report.bytes_copied == 3);
    CHECK(report.journal_hash == shelved.project()->journalHash());
    const auto verification = verify(shelved.place());
    CHECK(verification.files == 1);
    CHECK(verification.findings.empty());
    const auto copy = Project::open(shelved.place(), {&shelved.project().clock(), {}, true});
    CHECK(*copy->records() == *shelved.project()->records());
}

TEST_CASE("The next backup copies only what is new, and keeps the database that was there")
{
    Shelved shelved;
    shelved.photo("photos/a.jpg", "a");
    shelved.backUp();
    const auto before = shelved.project()->journalHash();
    shelved.photo("photos/b.jpg", "b");
    const auto report = shelved.backUp();
    CHECK(report.files_copied == 1);
    CHECK(report.files_kept == 1);
    CHECK(read(shelved.place() / "photos/b.jpg") == "b");
    const auto kept = storage::databaseCopies(shelved.place() / "backups");
    REQUIRE(kept.size() == 1);
    CHECK(kept.front().journal == before.substr(0, 8));
}

TEST_CASE("What the project lost and the backup has is not missing, its length on record or not")
{
    Shelved shelved;
    shelved.photo("photos/a.jpg", "a");
    shelved.project().change("No length", [](Edit &edit) {
        edit.update((*edit.records().media.begin()).id, [](Media &media) { media.bytes.reset(); });
    });
    shelved.backUp();
    fs::remove(shelved.project().folder() / "photos/a.jpg");
    CHECK(shelved.backUp().isWhole());
    CHECK(read(shelved.place() / "photos/a.jpg") == "a");
}

TEST_CASE("A backup refuses the place of another project, and one with changes of its own")
{
    Shelved shelved;
    shelved.backUp();
    SECTION("another project")
    {
        Shelved other;
        CHECK_THROWS_WITH(backup::backUp(other.project().folder(), shelved.shelf(),
                                         other.project().clock().now()),
                          Catch::Contains("another project"));
    }
    SECTION("somebody worked in the backup")
    {
        {
            const auto copy =
                Project::open(shelved.place(), {&shelved.project().clock(), {}, false});
            REQUIRE(copy->change("Part", [](Edit &edit) {
                Component part;
                part.name = "Tail";
                part.kind = ComponentKind::Part;
                edit.put(part);
            }));
        }
        CHECK_THROWS_WITH(shelved.backUp(), Catch::Contains("changes that this project has not"));
    }
    SECTION("somebody worked in the backup, and the project went on by more")
    {
        {
            const auto copy =
                Project::open(shelved.place(), {&shelved.project().clock(), {}, false});
            REQUIRE(copy->change("Part", [](Edit &edit) {
                Component part;
                part.name = "Tail";
                part.kind = ComponentKind::Part;
                edit.put(part);
            }));
        }
        shelved.project().part("Right wing");
        shelved.project().part("Rudder");
        CHECK_THROWS_WITH(shelved.backUp(), Catch::Contains("changes that this project has not"));
        const auto copy = Project::open(shelved.place(), {&shelved.project().clock(), {}, true});
        CHECK(copy->records()->components.size() == 2);
    }
    SECTION("a folder with something else")
    {
        fs::remove_all(shelved.place());
        write(shelved.place() / "taxes.txt", "mine");
        CHECK_THROWS_AS(shelved.backUp(), NotWritable);
        CHECK(read(shelved.place() / "taxes.txt") == "mine");
    }
    SECTION("the project itself")
    {
        CHECK_THROWS_WITH(backup::backUp(shelved.project().folder(),
                                         shelved.project().folder().parent_path(),
                                         shelved.project().clock().now()),
                          Catch::Contains("lies inside"));
    }
}

TEST_CASE("A missing and an altered file are told, and everything else is copied")
{
    Shelved shelved;
    shelved.photo("photos/a.jpg", "a");
    shelved.photo("photos/b.jpg", "b");
    shelved.photo("photos/c.jpg", "c");
    fs::remove(shelved.project().folder() / "photos/a.jpg");
    write(shelved.project().folder() / "photos/b.jpg", "changed");
    const auto report = shelved.backUp();
    CHECK(report.missing == std::vector<std::string>{"photos/a.jpg"});
    CHECK(report.altered == std::vector<std::string>{"photos/b.jpg"});
    CHECK(read(shelved.place() / "photos/c.jpg") == "c");
}

TEST_CASE("A backup that is ended early, wherever it was, leaves the one before whole")
{
    Shelved shelved;
    shelved.photo("photos/a.jpg", "a");
    const std::string hash = shelved.backUp().journal_hash;
    shelved.photo("photos/b.jpg", "b");
    shelved.photo("photos/c.jpg", "c");
    bool isDone = false;
    int ended = 0;
    for (int steps = 0; !isDone; ++steps) {
        int left = steps;
        isDone = backup::backUp(shelved.project().folder(), shelved.shelf(),
                                shelved.project().clock().now(), backup::Reading::NewFiles,
                                [&](const backup::CopyProgress &) { return left-- > 0; })
                     .has_value();
        const auto there = Project::open(shelved.place(), {&shelved.project().clock(), {}, true});
        CHECK((there->journalHash() == hash) != isDone);
        CHECK_FALSE(fs::exists(shelved.place() / ".records-new.db"));
        const auto found = verify(shelved.place()).findings;
        CHECK(std::none_of(found.begin(), found.end(), [](const Finding &finding) {
            return finding.text.find("No record names") == std::string::npos;
        }));
        ended += !isDone;
    }
    CHECK(ended >= 3);
    CHECK(verify(shelved.place()).findings.empty());
}

TEST_CASE("A first backup that was ended early is no obstacle to the next")
{
    Shelved shelved;
    shelved.photo("photos/a.jpg", "a");
    CHECK_FALSE(backup::backUp(shelved.project().folder(), shelved.shelf(),
                               shelved.project().clock().now(), backup::Reading::NewFiles,
                               [](const backup::CopyProgress &) { return false; }));
    CHECK_FALSE(fs::exists(shelved.place() / "records.db"));
    CHECK(shelved.backUp().isWhole());
    CHECK(verify(shelved.place()).findings.empty());
}

TEST_CASE("A file that no record knows is copied, and again when it says something else")
{
    Shelved shelved;
    write(shelved.project().folder() / "documents/note.txt", "one");
    CHECK(shelved.backUp().files_copied == 1);
    CHECK(shelved.backUp().files_kept == 1);
    write(shelved.project().folder() / "documents/note.txt", "two");
    CHECK(shelved.backUp().files_copied == 1);
    CHECK(read(shelved.place() / "documents/note.txt") == "two");
}

TEST_CASE("A copy that the backup's disk cut short is made again, one it altered is found")
{
    Shelved shelved;
    shelved.photo("photos/a.jpg", "whole");
    shelved.backUp();
    const fs::path copy = shelved.place() / "photos/a.jpg";
    write(copy, "who");
    CHECK(shelved.backUp().files_copied == 1);
    CHECK(read(copy) == "whole");
    write(copy, "whale");
    const auto report = shelved.backUp(backup::Reading::EveryFile);
    CHECK(report.damaged == std::vector<std::string>{"photos/a.jpg"});
    CHECK(read(copy) == "whole");
}

TEST_CASE("A copy of a file as it was taken in is not replaced by what the file became")
{
    Shelved shelved;
    shelved.photo("photos/a.jpg", "a");
    shelved.project().change("Size", [](Edit &edit) {
        const auto id = edit.records().media.begin()->id;
        edit.update(id, [](Media &media) { media.bytes.reset(); });
    });
    shelved.backUp();
    write(shelved.project().folder() / "photos/a.jpg", "painted over");
    const auto report = shelved.backUp();
    CHECK(report.altered == std::vector<std::string>{"photos/a.jpg"});
    CHECK(report.files_copied == 0);
    CHECK(read(shelved.place() / "photos/a.jpg") == "a");
}

TEST_CASE("The progress of a backup ends at the bytes of all files")
{
    Shelved shelved;
    shelved.photo("photos/a.jpg", std::string(600'000, 'a'));
    shelved.photo("photos/b.jpg", "b");
    backup::CopyProgress last;
    const auto follow = [&](const backup::CopyProgress &now) {
        CHECK(now.bytes_done >= last.bytes_done);
        CHECK(now.bytes_in_all == 600'001);
        last = now;
        return true;
    };
    for (int i = 0; i < 2; ++i) {
        last = {};
        backup::backUp(shelved.project().folder(), shelved.shelf(), shelved.project().clock().now(),
                       backup::Reading::EveryFile, follow);
        CHECK(last.bytes_done == 600'001);
    }
}

TEST_CASE("Of a small database a copy is due after each change, of a large one once a day")
{
    Shelved shelved;
    const auto &folder = shelved.project().folder();
    auto &clock = shelved.project().clock();
    CHECK(backup::keepCopy(folder, clock.now()));
    CHECK(backup::isCopyDueAtEnd(folder, clock.now()));
    const fs::path large = shelved.shelf() / "Large.lastrivet";
    fs::create_directories(large);
    fs::copy(folder / "backups", large / "backups", fs::copy_options::recursive);
    write(large / "records.db", "");
    fs::resize_file(large / "records.db", 9 * 1024 * 1024);
    CHECK_FALSE(backup::isCopyDueAtEnd(large, clock.now()));
    CHECK(backup::isCopyDueAtEnd(large, clock.now() + std::chrono::hours(24)));
}

TEST_CASE("A project keeps copies of its own database, one for each state")
{
    Shelved shelved;
    const auto &folder = shelved.project().folder();
    auto &clock = shelved.project().clock();
    CHECK(backup::isCopyDue(folder, clock.now()));
    CHECK(backup::keepCopy(folder, clock.now()));
    CHECK_FALSE(backup::isCopyDue(folder, clock.now()));
    CHECK_FALSE(backup::keepCopy(folder, clock.now()));
    shelved.project().part("Right wing");
    CHECK(backup::keepCopy(folder, clock.now() + std::chrono::seconds(1)));
    CHECK(backup::isCopyDue(folder, clock.now() + std::chrono::hours(24)));
    // Three within a second: of the day the last one stays.
    for (const std::string name : {"Rudder", "Fin", "Tailplane"}) {
        shelved.project().part(name);
        CHECK(backup::keepCopy(folder, clock.now()));
    }
    const auto copies = storage::databaseCopies(folder / "backups");
    REQUIRE(copies.size() == 1);
    const storage::Database copy(copies.front().file, storage::Database::Access::Immutable,
                                 storage::Database::Safety::WriteAhead);
    CHECK(copy.number(R"(SELECT count(*) FROM "component" WHERE "name"='Tailplane')") == 1);
}

TEST_CASE("The last backup is remembered with the project")
{
    Shelved shelved;
    CHECK_FALSE(backup::lastBackup(*shelved.project()));
    const backup::LastBackup last{shelved.project().clock().now(), "/media/big disk/backups",
                                  std::string(64, 'a')};
    backup::noteBackup(*shelved.project(), last);
    shelved.project().reopen();
    CHECK(backup::lastBackup(*shelved.project()) == last);
}

TEST_CASE("A backup that was noted while another program had the project is taken in by that")
{
    Shelved shelved;
    Project &project = *shelved.project();
    CHECK_FALSE(backup::takeNote(project));
    const backup::LastBackup first{shelved.project().clock().now(), "/media/disk/Wing",
                                   std::string(64, 'a')};
    const backup::LastBackup later{first.at + std::chrono::minutes(5), "/media/disk/Wing",
                                   std::string(64, 'b')};
    backup::leaveNote(project.folder(), later);
    CHECK(backup::takeNote(project));
    CHECK(backup::lastBackup(project) == later);
    CHECK_FALSE(backup::takeNote(project));
    backup::leaveNote(project.folder(), first);
    CHECK_FALSE(backup::takeNote(project));
    CHECK(backup::lastBackup(project) == later);
    for (const std::string words : {"", "soon", "1 x y"}) {
        write(project.folder() / "backups/backup-elsewhere.txt", words);
        CHECK_FALSE(backup::takeNote(project));
        CHECK(backup::lastBackup(project) == later);
        CHECK_FALSE(fs::exists(project.folder() / "backups/backup-elsewhere.txt"));
    }
}

TEST_CASE("A backup is old when more days than allowed went by and something was changed since")
{
    Shelved shelved;
    auto &project = shelved.project();
    CHECK(backup::standing(*project) == backup::Standing::Never);
    backup::choose(*project, {shelved.shelf(), true, 7});
    backup::noteBackup(*project,
                       {project.clock().now(), shelved.shelf().string(), project->journalHash()});
    project.clock().set(project.clock().now() + std::chrono::days(8));
    CHECK(backup::standing(*project) == backup::Standing::Fresh);
    project.part("Right wing");
    CHECK(backup::standing(*project) == backup::Standing::Old);
    project.clock().set(project.clock().now() - std::chrono::days(1));
    CHECK(backup::standing(*project) == backup::Standing::Fresh);
}
