// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/Archive.h"

#include "tests/support/TestPictures.h"
#include "tests/support/TestProject.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A record that names the program's own page is no obstacle to an archive")
{
    TestProject made;
    made.tamper(R"(INSERT INTO "media" ("id","kind","file")
                   VALUES (1,'document','photos-of-part.sql'))");
    const auto report = exchange::writeArchive(made.folder(), made.folder().parent_path() / "P.zip",
                                               made.clock().now());
    REQUIRE(report);
    CHECK(report->missing.empty());
}

TEST_CASE("An archive holds nothing under a name that would lead out of where it is unpacked")
{
    TestProject made;
    const auto project = made.folder();
    made.close();
    const auto outside = project.parent_path();
    writeText(outside / "secret.txt", "secret");
    writeText(project / "photos/a.jpg", "a");
    writeText(project / "..\\..\\evil.exe", "evil");
    writeText(project / "SHA256SUMS", "not the archive's");
    std::filesystem::create_symlink("../../secret.txt", project / "photos/link.jpg");
    std::int64_t id = 0;
    for (const std::string_view name :
         {"photos/a.jpg", "photos//a.jpg", "../secret.txt", "photos/link.jpg", "..\\..\\evil.exe",
          "SHA256SUMS", "/etc/hostname"})
        made.tamper(fmt::format(
            R"(INSERT INTO "media" ("id","kind","file") VALUES ({},'photo','{}'))", ++id, name));
    const auto zip = outside / "P.zip";
    const auto report = exchange::writeArchive(project, zip, made.clock().now());
    REQUIRE(report);
    CHECK(report->files == 1);
    CHECK(report->missing.size() == 5);

    // Python's reader of archives, as somebody else would list them.
    const auto names = outputOf(fmt::format("{} -c 'import sys, zipfile; print(\" "
                                            "\".join(zipfile.ZipFile(sys.argv[1]).namelist()))' {}",
                                            LASTRIVET_PYTHON, zip.string()));
    CHECK(names == "READ-ME-FIRST.txt photos-of-part.sql records.db records.json photos/a.jpg "
                   "SHA256SUMS");
}
