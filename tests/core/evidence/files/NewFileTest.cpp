// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/files/NewFile.h"

#include "tests/support/TemporaryFolder.h"
#include "tests/support/TestPictures.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace fs = std::filesystem;

TEST_CASE("What an interrupted program left is removed, but not through links that lead elsewhere")
{
    const TemporaryFolder folder;
    const fs::path photos = folder / "photos";
    const fs::path elsewhere = folder / "elsewhere";
    for (const fs::path &place : {photos / "2026", elsewhere}) {
        fs::create_directories(place);
        writeText(place / ".tmp-1-1", "half");
    }
    fs::create_directory_symlink(elsewhere, photos / "link");
    fs::create_directory_symlink(elsewhere, folder / "linked");
    evidence::sweepLeftovers(photos);
    evidence::sweepLeftovers(folder / "linked");
    CHECK_FALSE(fs::exists(photos / "2026/.tmp-1-1"));
    CHECK(fs::exists(elsewhere / ".tmp-1-1"));
}
