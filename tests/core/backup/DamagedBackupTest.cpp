// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/backup/Backup.h"
#include "core/storage/Database.h"
#include "core/verify/Verification.h"
#include "tests/support/Shelved.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <string>
#include <vector>

using namespace lastrivet;
using test::read;
using test::Shelved;
using test::write;
namespace fs = std::filesystem;

TEST_CASE("A backup with a damaged database is no obstacle to the next, which keeps it")
{
    Shelved shelved;
    shelved.photo("photos/a.jpg", "a");
    shelved.backUp();
    const fs::path database = shelved.place() / "records.db";
    const std::string whole = read(database);
    std::string left;
    SECTION("cut short")
    {
        left = whole.substr(0, whole.size() / 2);
    }
    SECTION("empty") {}
    SECTION("not even the beginning")
    {
        left = std::string(whole.size(), '\0');
    }
    write(database, left);
    const auto report = shelved.backUp();
    CHECK(report.isWhole());
    CHECK(report.files_kept == 1);
    CHECK(report.set_aside.empty());
    REQUIRE_FALSE(report.damaged_database.empty());
    CHECK(read(shelved.place() / report.damaged_database) == left);
    CHECK(verify(shelved.place()).findings.empty());
    CHECK(shelved.backUp().damaged_database.empty());
}

TEST_CASE("A database that is found damaged only when it is to become a copy is kept as it is")
{
    Shelved shelved;
    shelved.backUp();
    const fs::path file = shelved.place() / "records.db";
    std::string bytes = read(file);
    {
        const storage::Database database(file, storage::Database::Access::Immutable,
                                         storage::Database::Safety::RollbackJournal);
        const auto page = std::size_t(database.number("PRAGMA page_size"));
        const auto root = std::size_t(
            database.number("SELECT rootpage FROM sqlite_schema WHERE name='component'"));
        std::fill_n(bytes.begin() + std::ptrdiff_t((root - 1) * page), page, '\0');
    }
    write(file, bytes);
    const auto report = shelved.backUp();
    REQUIRE_FALSE(report.damaged_database.empty());
    CHECK(read(shelved.place() / report.damaged_database) == bytes);
    CHECK(verify(shelved.place()).findings.empty());
}

TEST_CASE("A backup whose journal rotted is damaged, and not taken for somebody's work in it")
{
    Shelved shelved;
    const std::string hash = shelved.backUp().journal_hash;
    std::string raw;
    for (std::size_t i = 0; i < hash.size(); i += 2)
        raw += char(std::stoi(hash.substr(i, 2), nullptr, 16));
    const fs::path database = shelved.place() / "records.db";
    std::string bytes = read(database);
    const std::size_t at = bytes.find(raw);
    REQUIRE(at != std::string::npos);
    bytes[at] = char(bytes[at] ^ 1);
    write(database, bytes);
    shelved.project().part("Right wing");
    const auto report = shelved.backUp();
    REQUIRE_FALSE(report.damaged_database.empty());
    CHECK(read(shelved.place() / report.damaged_database) == bytes);
    CHECK(verify(shelved.place()).findings.empty());
}

TEST_CASE("A damaged backup of another project, by its copies, is left alone")
{
    Shelved shelved;
    shelved.backUp();
    shelved.project().part("Right wing");
    shelved.backUp();
    write(shelved.place() / "records.db", "");
    Shelved other;
    CHECK_THROWS_WITH(
        backup::backUp(other.project().folder(), shelved.shelf(), other.project().clock().now()),
        Catch::Contains("another project"));
    CHECK(read(shelved.place() / "records.db").empty());
}

TEST_CASE("Files beside a damaged database that are not the project's get another name")
{
    Shelved shelved;
    shelved.photo("photos/a.jpg", "a");
    shelved.backUp();
    write(shelved.place() / "records.db", "");
    write(shelved.place() / "photos/a.jpg", "b");
    const auto report = shelved.backUp();
    CHECK(report.set_aside == std::vector<std::string>{"photos/a-set-aside-1.jpg"});
    CHECK(read(shelved.place() / "photos/a-set-aside-1.jpg") == "b");
    CHECK(read(shelved.place() / "photos/a.jpg") == "a");
}

TEST_CASE("A file that was damaged in the project is told while the backup has it whole")
{
    Shelved shelved;
    shelved.photo("photos/a.jpg", "whole");
    shelved.backUp();
    const fs::path original = shelved.project().folder() / "photos/a.jpg";
    const std::vector<std::string> altered{"photos/a.jpg"};
    write(original, "whale");
    SECTION("written to lately")
    {
        fs::last_write_time(original, fs::last_write_time(shelved.place() / "photos/a.jpg") +
                                          std::chrono::hours(1));
        CHECK(shelved.backUp().altered == altered);
    }
    SECTION("not by its time")
    {
        fs::last_write_time(original, fs::last_write_time(shelved.place() / "photos/a.jpg") -
                                          std::chrono::hours(1));
        CHECK(shelved.backUp().isWhole());
        CHECK(shelved.backUp(backup::Reading::Originals).altered == altered);
        CHECK(shelved.backUp(backup::Reading::EveryFile).altered == altered);
    }
    SECTION("cut short, a long time ago")
    {
        write(original, "who");
        fs::last_write_time(original, fs::last_write_time(shelved.place() / "photos/a.jpg") -
                                          std::chrono::hours(1));
        CHECK(shelved.backUp().altered == altered);
    }
    CHECK(read(shelved.place() / "photos/a.jpg") == "whole");
}
