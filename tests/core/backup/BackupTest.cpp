// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/backup/Backup.h"
#include "core/backup/LastBackup.h"
#include "core/backup/OwnCopies.h"
#include "core/base/Error.h"
#include "core/base/Sha256.h"
#include "core/storage/DatabaseCopies.h"
#include "core/verify/Verification.h"
#include "tests/support/TestProject.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <fstream>

using namespace lastrivet;
using lastrivet::test::TestProject;
namespace fs = std::filesystem;

namespace {

void write(const fs::path &file, std::string_view text)
{
    fs::create_directories(file.parent_path());
    std::ofstream(file, std::ios::binary) << text;
}

std::string read(const fs::path &file)
{
    std::ifstream stream(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

std::string hashOf(std::string_view text)
{
    return sha256({reinterpret_cast<const std::uint8_t *>(text.data()), text.size()});
}

/// A project with a part, and a shelf for its backups.
class Shelved {
public:
    Shelved() { m_project.part("Left wing"); }

    TestProject &project() { return m_project; }
    const fs::path &shelf() const { return m_shelf.path(); }
    fs::path place() const { return shelf() / "Test.lastrivet"; }

    void photo(const std::string &name, std::string_view content)
    {
        write(m_project.folder() / name, content);
        m_project.change("Photo " + name, [&](Edit &edit) {
            Media media;
            media.kind = MediaKind::Photo;
            media.file = name;
            media.sha256 = hashOf(content);
            media.bytes = std::int64_t(content.size());
            edit.put(media);
        });
    }
    backup::Report backUp(backup::Reading reading = backup::Reading::NewFiles)
    {
        return *backup::backUp(m_project.folder(), shelf(), m_project.clock().now(), reading);
    }
    backup::Report restore(const fs::path &from, const fs::path &to)
    {
        return *backup::restore(from, to, m_project.clock().now());
    }

private:
    TestProject m_project;
    TemporaryFolder m_shelf;
};

} // namespace

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
