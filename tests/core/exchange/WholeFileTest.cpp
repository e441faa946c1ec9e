// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/WholeFile.h"

#include "core/base/Error.h"
#include "core/base/Tongue.h"
#include "core/base/WriteFailure.h"
#include "tests/support/PlainUser.h"
#include "tests/support/TemporaryFolder.h"
#include "tests/support/TestProject.h"

#include <catch2/catch.hpp>

#include <cerrno>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <ostream>
#include <string>
#include <string_view>
#include <utility>

namespace lastrivet::exchange {

namespace {

namespace fs = std::filesystem;

/// What is said when the file cannot be written; empty when it can.
std::string refusalOf(const fs::path &file)
{
    try {
        writeWholeFile(file, [](std::ostream &out) { out << "records"; });
    } catch (const NotSaved &fault) {
        return fault.what();
    }
    return {};
}

} // namespace

TEST_CASE("A file that cannot be written is told with the reason")
{
    const test::TemporaryFolder folder;
    CHECK(refusalOf(folder / "whole.json").empty());
    CHECK_THAT(refusalOf(folder / "nowhere" / "whole.json"),
               Catch::Contains("cannot be written: there is no such folder; nothing was changed"));
    fs::create_directories(folder / "taken.json" / "inside");
    CHECK_THAT(refusalOf(folder / "taken.json"), Catch::Contains(": a folder has that name;"));
    fs::create_directory(folder / "shut");
    fs::permissions(folder.path(), fs::perms::others_exec, fs::perm_options::add);
    fs::permissions(folder / "shut", fs::perms::owner_read | fs::perms::owner_exec);
    const test::PlainUser plain;
    CHECK_THAT(refusalOf(folder / "shut" / "whole.json"),
               Catch::Contains(": the folder cannot be written;"));
}

TEST_CASE("What a project keeps is never written over")
{
    test::TestProject project;
    project.close();
    const fs::path photo = project.folder() / "photos" / "a.jpg";
    std::ofstream(photo) << "evidence";
    const test::TemporaryFolder elsewhere;
    fs::create_symlink(photo, elsewhere / "link.json");
    fs::copy_file(project.database(), elsewhere / "copy.json");
    for (const fs::path &place :
         {project.database(), photo, elsewhere / "link.json", elsewhere / "copy.json"})
        CHECK_THAT(refusalOf(place), Catch::Contains("is what a Lastrivet project keeps; nothing"));
    CHECK(fs::file_size(photo) == 8);
    project.reopen();
    // Beside these a person may put papers into the folder, and again.
    CHECK(refusalOf(project.folder() / "records.json").empty());
    CHECK(refusalOf(project.folder() / "records.json").empty());
}

TEST_CASE("What was done after the writing had failed is not told as its reason")
{
    const test::TemporaryFolder folder;
    const auto reasonAfter = [&](int error) -> std::string {
        try {
            writeWholeFile(folder / "whole.json", [error](std::ostream &out) {
                out.setstate(std::ios::badbit);
                errno = error;
            });
        } catch (const NotSaved &fault) {
            return fault.what();
        }
        return {};
    };
    CHECK_THAT(reasonAfter(ENOENT), Catch::Contains("cannot be written; nothing was changed"));
    CHECK_THAT(reasonAfter(ENOSPC), Catch::Contains("cannot be written: the disk is full;"));
    CHECK(fs::is_empty(folder.path()));
}

TEST_CASE("Of files that belong together all are replaced, or none")
{
    const test::TemporaryFolder folder;
    const fs::path first = folder / "a.csv";
    const fs::path second = folder / "b.csv";
    const auto say = [](std::string_view text) {
        return [text](std::ostream &out) { out << text; };
    };
    writeWholeFiles({{first, say("one")}, {second, say("two")}});
    CHECK(fs::file_size(first) == 3);
    CHECK(fs::file_size(second) == 3);
    SECTION("no room for the second")
    {
        const auto fail = [](std::ostream &out) {
            out.setstate(std::ios::badbit);
            errno = ENOSPC;
        };
        CHECK_THROWS_WITH(writeWholeFiles({{first, say("later")}, {second, fail}}),
                          Catch::Contains(second.string()) && Catch::Contains("the disk is full"));
    }
    SECTION("a folder in the place of the second")
    {
        fs::remove(second);
        fs::create_directory(second);
        CHECK_THROWS_WITH(writeWholeFiles({{first, say("later")}, {second, say("later")}}),
                          Catch::Contains("a folder has that name"));
    }
    CHECK(fs::file_size(first) == 3);
    CHECK(std::distance(fs::directory_iterator(folder.path()), fs::directory_iterator()) == 2);
}

TEST_CASE("Only what is usual has words for why a file cannot be written")
{
    CHECK(usualWriteFailure(ENOSPC) == "the disk is full");
    CHECK(usualWriteFailure(EROFS) == "the folder cannot be written");
    CHECK(usualWriteFailure(EDOM).empty());
    CHECK(usualWriteFailure(0).empty());
}

TEST_CASE("A reason of the disk can be said in every language, and an unusual one all the same")
{
    const auto sentence = [](std::string why) {
        return english(Message{"It failed: {0}.", {std::move(why)}});
    };
    CHECK(sentence(whyNotWritten(ENOSPC)) == "It failed: the disk is full.");
    CHECK(sentence(whyNotWritten(EACCES)) == "It failed: the folder cannot be written.");
    CHECK(sentence(whyNotRead(EACCES)) == "It failed: its permissions forbid it.");
    CHECK(sentence(whyDiskFailed(EIO)) == "It failed: the disk reports an error.");
    const Tongue other{[](std::string_view pattern) {
                           return std::string(pattern == "it is not there" ? "weg" : pattern);
                       },
                       {}};
    CHECK(said(Message{"{0}", {whyNotRead(ENOENT)}}, other) == "weg");
    CHECK(sentence(whyNotRead(EDOM)).find("domain") != std::string::npos);
}

} // namespace lastrivet::exchange
