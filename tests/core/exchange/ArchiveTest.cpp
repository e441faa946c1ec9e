// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/Archive.h"

#include "tests/support/TemporaryFolder.h"
#include "tests/support/TestPictures.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

Media fileNamed(std::int64_t id, std::string_view name)
{
    Media media;
    media.id = Id<Media>{id};
    media.file = name;
    return media;
}

} // namespace

TEST_CASE("An archive holds nothing under a name that would lead out of where it is unpacked")
{
    const TemporaryFolder folder;
    const auto project = folder.path() / "P";
    std::filesystem::create_directories(project / "photos");
    writeText(folder.path() / "secret.txt", "secret");
    writeText(project / "photos/a.jpg", "a");
    writeText(project / "..\\..\\evil.exe", "evil");
    writeText(project / "SHA256SUMS", "not the archive's");
    std::filesystem::create_symlink("../../secret.txt", project / "photos/link.jpg");

    Records records;
    std::int64_t id = 0;
    for (const std::string_view name :
         {"photos/a.jpg", "photos//a.jpg", "../secret.txt", "photos/link.jpg", "..\\..\\evil.exe",
          "SHA256SUMS", "/etc/hostname"})
        records.media.put(fileNamed(++id, name));
    const auto zip = folder.path() / "P.zip";
    const auto report = exchange::writeArchive(records, project, zip);
    CHECK(report.files == 1);
    CHECK(report.missing.size() == 5);

    // Python's reader of archives, as somebody else would list them.
    const auto names = outputOf(fmt::format("{} -c 'import sys, zipfile; print(\" "
                                            "\".join(zipfile.ZipFile(sys.argv[1]).namelist()))' {}",
                                            LASTRIVET_PYTHON, zip.string()));
    CHECK(names == "records.json photos/a.jpg SHA256SUMS");
}
