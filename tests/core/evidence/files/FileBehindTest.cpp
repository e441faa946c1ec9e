// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/files/FileBehind.h"

#include "core/base/Error.h"
#include "tests/support/TemporaryFolder.h"
#include "tests/support/TestPictures.h"

#include <catch2/catch.hpp>

#include <sys/stat.h>

using namespace lastrivet;
using namespace lastrivet::test;

namespace fs = std::filesystem;

TEST_CASE("What is written where a link lies goes into the file that it leads to")
{
    const TemporaryFolder folder;
    fs::create_directories(folder / "disk");
    writeText(folder / "disk/there.pdf", "before");
    fs::create_symlink(folder / "disk/there.pdf", folder / "link.pdf");
    CHECK(evidence::fileBehind(folder / "link.pdf") == fs::canonical(folder / "disk/there.pdf"));
    CHECK(evidence::fileBehind(folder / "disk/there.pdf") == folder / "disk/there.pdf");
    CHECK(evidence::fileBehind(folder / "new.pdf") == folder / "new.pdf");
}

TEST_CASE("A link that leads nowhere, a pipe and a device are no place for a file")
{
    const TemporaryFolder folder;
    fs::create_symlink(folder / "gone.pdf", folder / "link.pdf");
    CHECK_THROWS_AS(evidence::fileBehind(folder / "link.pdf"), NotSaved);
    fs::create_symlink("around.pdf", folder / "around.pdf");
    CHECK_THROWS_AS(evidence::fileBehind(folder / "around.pdf"), NotSaved);
    const fs::path pipe = folder / "pipe.pdf";
    REQUIRE(mkfifo(pipe.c_str(), 0600) == 0);
    CHECK_THROWS_AS(evidence::fileBehind(pipe), NotSaved);
    CHECK_THROWS_AS(evidence::fileBehind("/dev/null"), NotSaved);
}
