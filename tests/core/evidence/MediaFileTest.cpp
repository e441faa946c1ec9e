// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/MediaFile.h"

#include "tests/support/TemporaryFolder.h"

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

TEST_CASE("A file's name is shown without control characters and with valid letters only")
{
    CHECK(shownName("/a/b/left wing.jpg") == "left wing.jpg");
    CHECK(shownName("a\nb\x1b[31m\"c'.jpg") == "a?b?[31m\"c'.jpg");
    CHECK(shownName("Flügel.jpg") == "Flügel.jpg");
    CHECK(shownName("Fl\xfcgel.jpg") == "Fl?gel.jpg");
    CHECK(shownName(std::string(200, 'a')).size() < 90);
}
