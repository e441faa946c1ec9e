// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/FileImport.h"
#include "core/exchange/Import.h"
#include "tests/support/TemporaryFolder.h"

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <string>
#include <string_view>

using namespace lastrivet;
using namespace lastrivet::exchange;

namespace fs = std::filesystem;

namespace {

void write(const fs::path &path, std::string_view content)
{
    fs::create_directories(path.parent_path());
    std::ofstream(path, std::ios::binary) << content;
}

} // namespace

TEST_CASE("A file that its document says no sum of is known by the sum it has from then on")
{
    const test::TemporaryFolder folder;
    write(folder / "in/own/a.jpg", "picture");
    const fs::path document = folder / "in/document.json";
    write(document, R"({"format": "lastrivet-records", "version": 1,
        "project": {"name": "Demo", "profile": "ca"},
        "media": [{"id": 1, "kind": "photo", "file": "own/a.jpg"},
                  {"id": 2, "kind": "photo", "file": "own/gone.jpg"}]})");
    const auto made =
        importAsNewProject(folder / "Demo.lastrivet", document, ProfileLibrary::standard(), {});
    REQUIRE(made);
    const auto records = made->project->records();
    const Media *media = records->find(Id<Media>{1});
    REQUIRE(media);
    // As coreutils' sha256sum says.
    CHECK(media->sha256 == "2cea274d0bedc39ec4ab6ba9e59ec889e3ed6fb56a1cf088a64d9b383378dc97");
    CHECK(media->bytes == 7);
    CHECK(records->find(Id<Media>{2})->sha256.empty());

    const auto again = importDocument(*made->project, document);
    REQUIRE(again);
    CHECK(again->addedInAll() == 0);
    CHECK(again->skipped == 2);
    CHECK(again->files_copied == 0);
}

TEST_CASE("A file that was not there when its record came is copied when the document comes again")
{
    const test::TemporaryFolder folder;
    const fs::path document = folder / "in/document.json";
    // As coreutils' sha256sum says.
    const std::string sum = "2cea274d0bedc39ec4ab6ba9e59ec889e3ed6fb56a1cf088a64d9b383378dc97";
    write(document, R"({"format": "lastrivet-records", "version": 1,
        "project": {"name": "Demo", "profile": "ca"},
        "media": [{"id": 1, "kind": "photo", "file": "own/a.jpg"},
                  {"id": 2, "kind": "photo", "file": "own/b.jpg", "sha256": ")" +
                        sum + R"("}]})");
    const auto made =
        importAsNewProject(folder / "Demo.lastrivet", document, ProfileLibrary::standard(), {});
    REQUIRE(made);
    CHECK(made->report.files_missing.size() == 2);
    write(folder / "in/own/a.jpg", "picture");
    write(folder / "in/own/b.jpg", "another picture");
    const auto wrong = importDocument(*made->project, document);
    REQUIRE_FALSE(wrong);
    CHECK(wrong.reason().front().place == "/media/1/file");
    // The sum of the other picture as coreutils' sha256sum says.
    CHECK(english(wrong.reason().front().what) ==
          "The project lacks this file, and the one beside the document is another: its SHA-256 is "
          "b2917681b4f4fee3ef345ae33557fbe7ddbee9e0851efbff9cad5708ef1ad247, the one on record " +
              sum + ". Nothing was taken in; put the right file there, or take this one away.");
    CHECK_FALSE(fs::exists(folder / "Demo.lastrivet/own/a.jpg"));
    write(folder / "in/own/b.jpg", "picture");
    const auto again = importDocument(*made->project, document);
    REQUIRE(again);
    CHECK(again->skipped == 2);
    CHECK(again->files_copied == 2);
    CHECK(made->project->records()->find(Id<Media>{1})->sha256 == sum);
    CHECK(fs::exists(folder / "Demo.lastrivet/own/b.jpg"));
}

TEST_CASE("Of two files of one name that differ, neither of which has a sum, nothing is chosen")
{
    const test::TemporaryFolder folder;
    const fs::path document = folder / "in/document.json";
    write(document, R"({"format": "lastrivet-records", "version": 1,
        "project": {"name": "Demo", "profile": "ca"},
        "media": [{"id": 1, "kind": "photo", "file": "own/a.jpg"}]})");
    const auto made =
        importAsNewProject(folder / "Demo.lastrivet", document, ProfileLibrary::standard(), {});
    REQUIRE(made);
    write(folder / "Demo.lastrivet/own/a.jpg", "picture");
    write(folder / "in/own/a.jpg", "picture, cut");
    const auto wrong = importDocument(*made->project, document);
    REQUIRE_FALSE(wrong);
    CHECK(english(wrong.reason().front().what) ==
          "The project has this file with other content than the one beside the document, and no "
          "SHA-256 on record says which is right. Nothing was taken in, and both are as they were; "
          "take away the one that is wrong.");
    fs::remove(folder / "in/own/a.jpg");
    REQUIRE(importDocument(*made->project, document));
    // As coreutils' sha256sum says.
    CHECK(made->project->records()->find(Id<Media>{1})->sha256 ==
          "2cea274d0bedc39ec4ab6ba9e59ec889e3ed6fb56a1cf088a64d9b383378dc97");
}

TEST_CASE("A sum in capital letters is that of its file, and is kept in small ones")
{
    const test::TemporaryFolder folder;
    write(folder / "in/own/a.jpg", "picture");
    const fs::path document = folder / "in/document.json";
    // As coreutils' sha256sum says, but for its capitals.
    write(document, R"({"format": "lastrivet-records", "version": 1,
        "project": {"name": "Demo", "profile": "ca"},
        "media": [{"id": 1, "kind": "photo", "file": "own/a.jpg", "sha256":
            "2CEA274D0BEDC39EC4AB6BA9E59EC889E3ED6FB56A1CF088A64D9B383378DC97"}]})");
    const auto made =
        importAsNewProject(folder / "Demo.lastrivet", document, ProfileLibrary::standard(), {});
    REQUIRE(made);
    CHECK(made->project->records()->find(Id<Media>{1})->sha256 ==
          "2cea274d0bedc39ec4ab6ba9e59ec889e3ed6fb56a1cf088a64d9b383378dc97");
    const auto again = importDocument(*made->project, document);
    REQUIRE(again);
    CHECK(again->skipped == 1);
}

TEST_CASE("A file name that no disk can keep is told as too long")
{
    const test::TemporaryFolder folder;
    write(folder / "in/own/a.jpg", "picture");
    const fs::path document = folder / "in/document.json";
    write(document, R"({"format": "lastrivet-records", "version": 1,
        "project": {"name": "Demo", "profile": "ca"},
        "media": [{"id": 1, "kind": "photo", "file": "own/)" +
                        std::string(300, 'x') + R"(.jpg"}]})");
    const auto refused =
        importAsNewProject(folder / "Demo.lastrivet", document, ProfileLibrary::standard(), {});
    REQUIRE_FALSE(refused);
    REQUIRE(refused.reason().size() == 1);
    CHECK(english(refused.reason().front().what) ==
          "The file name is longer than the disk allows; most end at 255 bytes.");
}
