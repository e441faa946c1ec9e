// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Opening.h"
#include "core/base/Clock.h"
#include "core/base/Error.h"
#include "core/profiles/ProfileLibrary.h"
#include "core/storage/Schema.h"
#include "tests/support/PlainUser.h"
#include "tests/support/TestProject.h"

#include <sys/wait.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <csignal>
#include <fstream>
#include <optional>
#include <sstream>
#include <utility>

using namespace lastrivet;
namespace fs = std::filesystem;

namespace {

std::string bytesOf(const fs::path &file)
{
    std::ostringstream bytes;
    bytes << std::ifstream(file, std::ios::binary).rdbuf();
    return bytes.str();
}

void writeTo(const fs::path &file, std::string_view bytes)
{
    std::ofstream(file, std::ios::binary) << bytes;
}

/// A clock that lets another program make its project in the folder first, when it is asked.
class QuickerProgram final : public Clock {
public:
    QuickerProgram(const fs::path &folder, bool isAtIt)
        : m_folder(folder)
        , m_isAtIt(isAtIt)
    {
    }

    std::chrono::sys_time<std::chrono::milliseconds> now() const override
    {
        const auto time = SystemClock{}.now();
        if (std::exchange(m_wasAsked, true))
            return time;
        m_opening = storage::createDatabase(storage::ProjectFolder(m_folder), time);
        writeTo(m_folder / "photos/a.jpg", "a");
        if (!m_isAtIt)
            m_opening = {};
        return time;
    }

private:
    fs::path m_folder;
    bool m_isAtIt;
    mutable bool m_wasAsked = false;
    mutable storage::Opening m_opening;
};

/// A clock that cannot say what time it is.
class BrokenClock final : public Clock {
public:
    std::chrono::sys_time<std::chrono::milliseconds> now() const override
    {
        throw Fault("The clock stands still.");
    }
};

std::vector<std::string> namesIn(const fs::path &folder)
{
    std::vector<std::string> names;
    for (const auto &entry : fs::directory_iterator(folder))
        names.push_back(entry.path().filename().string());
    std::sort(names.begin(), names.end());
    return names;
}

/// While it lives, the folder can only be read.
class ReadOnlyFolder {
public:
    explicit ReadOnlyFolder(fs::path folder)
        : m_folder(std::move(folder))
    {
        fs::permissions(m_folder.parent_path(), fs::perms(0755));
        for (const auto &entry : fs::directory_iterator(m_folder))
            fs::permissions(entry.path(), fs::perms(entry.is_directory() ? 0555 : 0444));
        fs::permissions(m_folder, fs::perms(0555));
        m_user.emplace();
    }
    ~ReadOnlyFolder()
    {
        m_user.reset();
        fs::permissions(m_folder, fs::perms(0755));
        for (const auto &entry : fs::directory_iterator(m_folder))
            fs::permissions(entry.path(), fs::perms(entry.is_directory() ? 0755 : 0644));
    }

private:
    fs::path m_folder;
    std::optional<test::PlainUser> m_user;
};

void open(const fs::path &folder)
{
    (void)Project::open(folder, {});
}

} // namespace

TEST_CASE("A new project folder holds what the papers say and a page for whoever finds it")
{
    test::TestProject project;
    for (const auto *name : {"records.db", "photos", "documents", "backups", "READ-ME-FIRST.txt"})
        CHECK(fs::exists(project.folder() / name));
    CHECK(bytesOf(project.folder() / "READ-ME-FIRST.txt").find("Test") != std::string::npos);
}

TEST_CASE("A project is not made where something is already")
{
    test::TestProject project;
    project.close();
    const auto before = bytesOf(project.database());
    CHECK_THROWS_WITH(Project::create(project.folder(), {}, {}, {}),
                      Catch::Contains("exists already"));
    CHECK(bytesOf(project.database()) == before);
}

TEST_CASE("A project whose folder has no name takes nothing from the folder that one is in")
{
    const lastrivet::TemporaryFolder folder;
    fs::create_directories(folder.path() / "photos");
    writeTo(folder.path() / "photos/a.jpg", "a");
    writeTo(folder.path() / "records.db", "records");
    ProjectFacts facts;
    facts.name = "Test";
    const auto profile = ProfileLibrary::standard().profile("plain");
    const fs::path before = fs::current_path();
    fs::current_path(folder.path());
    CHECK_THROWS_AS(Project::create("", facts, profile, {}), NotWritable);
    fs::current_path(before);
    CHECK(bytesOf(folder.path() / "photos/a.jpg") == "a");
    CHECK(bytesOf(folder.path() / "records.db") == "records");
}

TEST_CASE("A link to a place that is not there is left to whoever made it")
{
    const lastrivet::TemporaryFolder folder;
    const fs::path link = folder.path() / "link";
    fs::create_symlink(folder.path() / "unplugged", link);
    ProjectFacts facts;
    facts.name = "Test";
    CHECK_THROWS_WITH(Project::create(link, facts, ProfileLibrary::standard().profile("plain"), {}),
                      Catch::Contains("exists already"));
    CHECK(fs::is_symlink(fs::symlink_status(link)));
}

TEST_CASE("Who makes a project where another program is making one takes nothing from it")
{
    const lastrivet::TemporaryFolder folder;
    ProjectFacts facts;
    facts.name = "Test";
    facts.time_zone = "UTC";
    const auto profile = ProfileLibrary::standard().profile("plain");
    const bool isAtIt = GENERATE(true, false);
    const QuickerProgram other(folder.path() / "new", isAtIt);
    CHECK_THROWS_WITH(Project::create(folder.path() / "new", facts, profile, {&other, {}, false}),
                      Catch::Contains(isAtIt ? "just now" : "exists already"));
    CHECK(fs::exists(folder.path() / "new/records.db"));
    CHECK(bytesOf(folder.path() / "new/photos/a.jpg") == "a");
}

TEST_CASE("A project whose facts break a rule is not made, and leaves no folder behind")
{
    const lastrivet::TemporaryFolder folder;
    ProjectFacts facts;
    CHECK_THROWS_AS(Project::create(folder.path() / "new", facts, {}, {}), UnreadableInput);
    CHECK_FALSE(fs::exists(folder.path() / "new"));
}

TEST_CASE(
    "A project that could not be made leaves the empty folder that was there, or the link to it")
{
    const lastrivet::TemporaryFolder folder;
    const fs::path place = folder.path() / "new";
    const auto kind = GENERATE(as<std::string>{}, "none", "folder", "link");
    if (kind == "folder")
        fs::create_directory(place);
    if (kind == "link") {
        fs::create_directory(folder.path() / "disk");
        fs::create_directory_symlink(folder.path() / "disk", place);
    }
    ProjectFacts facts;
    facts.name = "Test";
    const BrokenClock clock;
    CHECK_THROWS_WITH(Project::create(place, facts, ProfileLibrary::standard().profile("plain"),
                                      {&clock, {}, false}),
                      "The clock stands still.");
    CHECK(fs::exists(place) == (kind != "none"));
    CHECK(fs::is_symlink(fs::symlink_status(place)) == (kind == "link"));
    if (kind != "none")
        CHECK(fs::is_empty(place));
}

TEST_CASE("What is no project is refused in one sentence and left as it is")
{
    const lastrivet::TemporaryFolder folder;
    CHECK_THROWS_AS(open(folder.path() / "nowhere"), UnreadableInput);
    CHECK_THROWS_WITH(open(folder.path()), Catch::Contains("has no records.db"));
    const auto file = folder.path() / "records.db";
    const std::string header("SQLite format 3\0", 16);
    for (const auto &content : {std::string(), std::string("a shopping list"),
                                header + std::string(84, '\0'), std::string(5000, 'x')}) {
        writeTo(file, content);
        CHECK_THROWS_WITH(open(folder.path()), Catch::Contains("is not a Lastrivet project"));
        CHECK(bytesOf(file) == content);
        CHECK(namesIn(folder.path()) == std::vector<std::string>{"records.db"});
    }
    writeTo(file, "");
    CHECK_THROWS_WITH(open(folder.path()), Catch::Contains("the file is empty"));
}

TEST_CASE("A project of a newer schema is refused and stays as it is, byte for byte")
{
    test::TestProject project;
    project.close();
    project.tamper("PRAGMA journal_mode=DELETE; PRAGMA user_version=900");
    const auto before = bytesOf(project.database());
    const auto names = namesIn(project.folder());
    CHECK_THROWS_WITH(open(project.folder()), Catch::Contains("newer Lastrivet (schema 900"));
    CHECK(bytesOf(project.database()) == before);
    CHECK(namesIn(project.folder()) == names);
}

TEST_CASE("A newer schema that still waits in the write-ahead log is refused too")
{
    test::TestProject project;
    project.close();
    const lastrivet::TemporaryFolder other;
    {
        storage::Database database(project.database(), storage::Database::Access::ReadWrite,
                                   storage::Database::Safety::WriteAhead);
        database.run("PRAGMA user_version=900");
        // As if the power had failed here.
        fs::copy(project.folder(), other.path() / "copy", fs::copy_options::recursive);
    }
    const auto copy = other.path() / "copy" / "records.db";
    const auto before = bytesOf(copy);
    CHECK_THROWS_WITH(open(other.path() / "copy"), Catch::Contains("newer Lastrivet"));
    CHECK(bytesOf(copy) == before);
    CHECK(bytesOf(copy.string() + "-wal").size() > 0);
}

TEST_CASE("A journal whose newest row is the last that numbers can tell takes no further one")
{
    const auto [seq, stamp, why] = GENERATE(table<std::string, std::string, std::string>(
        {{"max(seq)+1", "9223372036854775807", "no time comes after that of row"},
         {"9223372036854775807", "max(stamp)+1", "no row can follow row 9223372036854775807"}}));
    test::TestProject project;
    const auto wing = project.part("Wing");
    project.close();
    project.tamper("INSERT INTO journal (seq,change_id,stamp,kind,label,schema,previous_hash,hash) "
                   "SELECT " +
                   seq + ",'last'," + stamp +
                   ",'printed','Paper',max(schema),zeroblob(32),zeroblob(32) FROM journal");
    project.reopen();
    CHECK_THROWS_WITH(project->change("Renamed",
                                      [&](Edit &edit) {
                                          edit.update(wing,
                                                      [](Component &part) { part.name = "Left"; });
                                      }),
                      Catch::Contains(why));
    CHECK(project->records()->find(wing)->name == "Wing");
    CHECK(project->journal().back().label == "Paper");
}

TEST_CASE("A database that was cut short is refused with both lengths")
{
    test::TestProject project;
    project.close();
    const auto size = fs::file_size(project.database());
    fs::resize_file(project.database(), size / 2);
    CHECK_THROWS_WITH(open(project.folder()),
                      Catch::Contains(fmt::format("holds {} of {} bytes", size / 2, size)));
}

TEST_CASE("A second program opens for reading only and says who writes and since when")
{
    test::TestProject project;
    project.part("Wing");
    auto other = project.openAgain();
    CHECK(other->isReadOnly());
    CHECK_THAT(other->readOnlyReason(),
               Catch::Contains("open for writing since 2026-03-14T09:00 ") &&
                   Catch::Contains(fmt::format("process {} on ", ::getpid())));
    CHECK(*other->records() == *project->records());
    const auto refused = other->change("Part", [](Edit &edit) {
        Component part;
        part.name = "Tail";
        edit.put(part);
    });
    REQUIRE_FALSE(refused);
    CHECK_THAT(english(refused.reason()), Catch::Contains("open for writing since"));
    CHECK_FALSE(other->undo());
    CHECK_THROWS_AS(other->setLocalState("timer", "1"), NotWritable);
    other.reset();
    project.reopen();
    CHECK_FALSE(project->isReadOnly());
    CHECK(project->readOnlyReason().empty());
}

TEST_CASE("A program that is killed leaves no stuck lock and no half change")
{
    test::TestProject project;
    project.close();
    const auto child = ::fork();
    if (child == 0) {
        auto mine = Project::open(project.folder(), {});
        Component part;
        part.name = "Wing";
        // What came of it is read below, from the disk.
        (void)mine->change("Part", [&](Edit &edit) { edit.put(part); });
        ::raise(SIGKILL);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    REQUIRE(WIFSIGNALED(status));
    project.reopen();
    CHECK_FALSE(project->isReadOnly());
    CHECK(project->records()->components.size() == 1);
}

TEST_CASE("A folder that cannot be written is read, also what still waits in the log")
{
    test::TestProject project;
    project.part("Wing");
    const lastrivet::TemporaryFolder other;
    const auto copy = other.path() / "Test.lastrivet";
    fs::copy(project.folder(), copy, fs::copy_options::recursive);
    fs::remove(copy / "records.db-shm");
    REQUIRE(fs::file_size(copy / "records.db-wal") > 0);
    const auto names = namesIn(copy);
    const ReadOnlyFolder frozen(copy);
    {
        const auto read = Project::open(copy, {});
        CHECK(read->readOnlyReason() == "The project's folder cannot be written.");
        CHECK(*read->records() == *project->records());
        CHECK(read->notePrinted("Packet") == project->journalHash());
    }
    CHECK(namesIn(copy) == names);
}

TEST_CASE("A folder that cannot be written is read in place when nothing waits in a log")
{
    test::TestProject project;
    project.part("Wing");
    const auto records = project->records();
    project.close();
    const auto names = namesIn(project.folder());
    const ReadOnlyFolder frozen(project.folder());
    const auto read = Project::open(project.folder(), {});
    CHECK(read->isReadOnly());
    CHECK(*read->records() == *records);
    CHECK(namesIn(project.folder()) == names);
}

TEST_CASE("A project keeps the profile it was made with")
{
    test::TestProject project;
    const auto before = project->profile().json;
    REQUIRE_FALSE(before.empty());
    project.reopen();
    CHECK(project->profile().json == before);
    CHECK(project->profile().id == "plain");
    CHECK(project->records()->profile_copy == before);
}
