// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/files/SummedFolder.h"

#include "core/base/Error.h"
#include "tests/support/TemporaryFolder.h"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <fstream>

namespace lastrivet::evidence {

namespace {

namespace fs = std::filesystem;

void write(const fs::path &file, std::string_view text)
{
    std::ofstream(file, std::ios::binary) << text;
}

/// Says the same as coreutils, which is what people check a folder with.
bool sha256sumAccepts(const fs::path &folder)
{
    const std::string command =
        "cd '" + folder.string() + "' && sha256sum --quiet --strict -c SHA256SUMS >/dev/null 2>&1";
    return std::system(command.c_str()) == 0;
}

std::size_t entries(const fs::path &folder)
{
    return std::size_t(std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

} // namespace

TEST_CASE("A folder of files comes with sums that sha256sum accepts, and notices a changed byte")
{
    const test::TemporaryFolder home;
    write(home / "source.jpg", "a picture");
    {
        SummedFolder folder(home / "Packet");
        folder.addBy("Packet.pdf", [](const fs::path &place) { write(place, "pages"); });
        // Of the same bytes, printed by sha256sum.
        CHECK(folder.add(home / "source.jpg", "photos/001 with\\backslash.jpg") ==

              "92b2fa58028958317e408bd84ecfa70f5ee35b121991dbc232c49d166353708b");
        folder.finish();
    }
    CHECK(sha256sumAccepts(home / "Packet"));
    CHECK(entries(home / "Packet") == 3);
    write(home / "Packet" / "Packet.pdf", "Pages");
    CHECK_FALSE(sha256sumAccepts(home / "Packet"));
}

TEST_CASE("Nothing is left of a folder that is not finished, or lacks a file")
{
    const test::TemporaryFolder home;
    write(home / "source.jpg", "a picture");
    {
        SummedFolder folder(home / "Packet");
        folder.add(home / "source.jpg", "photos/1.jpg");
    }
    CHECK(entries(home.path()) == 1);
    {
        SummedFolder folder(home / "Packet");
        CHECK_THROWS_AS(folder.add(home / "gone.jpg", "photos/1.jpg"), NotSaved);
    }
    CHECK(entries(home.path()) == 1);
}

TEST_CASE("A folder that holds something is never written over; an empty one is filled")
{
    const test::TemporaryFolder home;
    fs::create_directory(home / "Packet");
    {
        SummedFolder folder(home / "Packet");
        folder.addBy("a", [](const fs::path &place) { write(place, "a"); });
        folder.finish();
    }
    CHECK(sha256sumAccepts(home / "Packet"));
    CHECK_THROWS_WITH(SummedFolder(home / "Packet"), Catch::Contains("something is there already"));
    CHECK_THROWS_WITH(SummedFolder(home / "no" / "Packet"),
                      Catch::Contains("there is no such folder"));
}

} // namespace lastrivet::evidence
