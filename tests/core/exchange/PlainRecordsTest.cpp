// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/PlainRecords.h"

#include "core/base/Error.h"
#include "tests/support/TestPictures.h"
#include "tests/support/TestProject.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;
namespace fs = std::filesystem;

TEST_CASE("What is laid into the folder for whoever finds it never follows a link out of it")
{
    TestProject made;
    const fs::path folder = made.folder();
    const fs::path letter = folder.parent_path() / "letter.txt";
    writeText(letter, "dear");
    fs::create_symlink(letter, folder / "READ-ME-FIRST.txt.new");
    exchange::writePlainRecords(*made->records(), folder);
    CHECK(readText(letter) == "dear");
    CHECK(fs::symlink_status(folder / "READ-ME-FIRST.txt").type() == fs::file_type::regular);
    CHECK(readText(folder / "READ-ME-FIRST.txt").find("Test") != std::string::npos);
    CHECK(fs::exists(folder / "lists/people.csv"));
}

TEST_CASE("A page that cannot be laid into the folder leaves nothing half-written there")
{
    TestProject made;
    const fs::path folder = made.folder();
    fs::remove(folder / "READ-ME-FIRST.txt");
    fs::create_directories(folder / "READ-ME-FIRST.txt" / "inside");
    CHECK_THROWS(exchange::writePlainRecords(*made->records(), folder));
    CHECK_FALSE(fs::exists(folder / "READ-ME-FIRST.txt.new"));
}

TEST_CASE("Lists are not written where a link leads, over others of their names")
{
    TestProject made;
    const fs::path folder = made.folder();
    const fs::path desk = folder.parent_path() / "desk";
    fs::create_directories(desk);
    writeText(desk / "people.csv", "friends");
    fs::create_directory_symlink(desk, folder / "lists");
    CHECK_THROWS_AS(exchange::writePlainRecords(*made->records(), folder), NotSaved);
    CHECK(readText(desk / "people.csv") == "friends");
}
