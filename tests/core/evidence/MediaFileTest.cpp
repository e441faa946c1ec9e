// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/MediaFile.h"

#include "tests/support/TemporaryFolder.h"
#include "tests/support/TestPictures.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::evidence;
using namespace lastrivet::test;

namespace fs = std::filesystem;

namespace {
std::optional<fs::path> located(const fs::path &folder, std::string_view file)
{
    Media media;
    media.file = std::string(file);
    return locate(folder, media);
}
} // namespace

TEST_CASE("A record's file is found inside the project folder only")
{
    const TemporaryFolder folder;
    const fs::path project = folder / "Project.lastrivet";
    fs::create_directories(project / "photos");
    fs::create_directories(folder / "Project.lastrivet-other");
    fs::create_directory_symlink("/", project / "photos/root");
    CHECK(located(project, "photos/2026/a.jpg") == fs::canonical(project) / "photos/2026/a.jpg");
    for (const char *outside : {"", "/etc/passwd", "../a.jpg", "photos/../../a.jpg", "..",
                                "photos/root/etc/passwd", "../Project.lastrivet-other/a.jpg"}) {
        INFO(outside);
        CHECK_FALSE(located(project, outside));
    }
}

TEST_CASE("Why a file is not looked for is told as it is")
{
    const auto why = [](std::string_view file) { return std::string(whyNotLocated(file)); };
    for (const char *outside : {"", "../a.jpg", "/etc/hostname", "photos/../../a.jpg", "photos/"})
        CHECK(why(outside) == "The file {0} would lie outside the project's folder.");
    CHECK_THAT(why("photos\\a.jpg"), Catch::Contains("letters in its name"));
    CHECK_THAT(why("C:a.jpg"), Catch::Contains("letters in its name"));
    CHECK_THAT(why("backups/2026.db"), Catch::Contains("what the program itself keeps"));
    CHECK_THAT(why("photos/a.jpg"), Catch::Contains("behind a link that leads out"));
}

TEST_CASE("In a project folder that cannot be found there are no files, nor elsewhere")
{
    const TemporaryFolder folder;
    fs::create_symlink("around", folder / "around");
    CHECK_FALSE(located(folder / "around", "photos/2026/a.jpg"));
}

TEST_CASE(
    "No record names what the program keeps in the folder, or what is more than a name elsewhere")
{
    for (const char *name :
         {"records.db", "Records.db-wal", "records.json", "SHA256SUMS", "READ-ME-FIRST.txt",
          "backups/2026.db", "cache/aa/b.jpg", ".lock", "./photos/a.jpg", "photos/", "photos/a\nb",
          "photos\\..\\a.jpg", "C:a.jpg", "photos/\x1b[2J.jpg"}) {
        INFO(name);
        CHECK_FALSE(mayNameFile(name));
    }
    CHECK_FALSE(mayNameFile(std::string_view("photos/a.jpg\0.png", 17)));
    for (const char *name : {"photos/2026/a.jpg", "letter.pdf", "photos/records.jpg",
                             "documents/Flügel: rechts.pdf", "photos/..a.jpg"}) {
        INFO(name);
        CHECK(mayNameFile(name));
    }
}

TEST_CASE("Only a picture, a video or a PDF that is called so is handed to the desktop")
{
    const TemporaryFolder folder;
    const auto isOpened = [&](std::string_view name, std::string_view content) {
        writeText(folder.path() / name, content);
        Media media;
        media.file = name;
        return bool(locateToOpen(folder.path(), media));
    };
    CHECK(isOpened("a.pdf", "%PDF-1.7\n%%EOF"));
    CHECK(isOpened("a.JPG", "\xff\xd8\xff\xe0"));
    CHECK_FALSE(isOpened("a.desktop", "%PDF-1.7\n[Desktop Entry]\nExec=true"));
    CHECK_FALSE(isOpened("a.pdf", "[Desktop Entry]\nExec=true"));
    CHECK_FALSE(isOpened("a", "%PDF-1.7"));
    CHECK_FALSE(isOpened("a.", "%PDF-1.7"));
    Media nowhere;
    nowhere.file = "missing.pdf";
    CHECK_FALSE(locateToOpen(folder.path(), nowhere));
}

TEST_CASE("A file's name is shown without control characters and with valid letters only")
{
    CHECK(shownName("/a/b/left wing.jpg") == "left wing.jpg");
    CHECK(shownName("a\nb\x1b[31m\"c'.jpg") == "a?b?[31m\"c'.jpg");
    CHECK(shownName("Flügel.jpg") == "Flügel.jpg");
    CHECK(shownName("Fl\xfcgel.jpg") == "Fl?gel.jpg");
    CHECK(shownName("\xed\xa0\x80.jpg") == "???.jpg");
    CHECK(shownName(std::string(80, 'a')) == std::string(80, 'a'));
    CHECK(shownName(std::string(200, 'a')) == std::string(80, 'a') + "…");
}
