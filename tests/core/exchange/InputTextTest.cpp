// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/InputText.h"

#include "core/base/Error.h"
#include "tests/support/TemporaryFolder.h"
#include "tests/support/TestPictures.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A file that is longer than any list of records is refused before it is read")
{
    const TemporaryFolder folder;
    const auto file = folder.path() / "long.json";
    writeText(file, "{");
    std::filesystem::resize_file(file, (std::uintmax_t{1} << 30) + 1); // holds no blocks
    try {
        exchange::readInputFile(file);
        FAIL("it was read");
    } catch (const UnreadableInput &complaint) {
        CHECK(std::string(complaint.what()).find("longer than any") != std::string::npos);
    }
}

TEST_CASE("A file is read whole, but for a mark of its byte order")
{
    const TemporaryFolder folder;
    const std::string long_text(3'000'000, 'x');
    writeText(folder.path() / "a", "\xEF\xBB\xBF" + long_text);
    CHECK(exchange::readInputFile(folder.path() / "a") == long_text);
    CHECK_THROWS_AS(exchange::readInputFile(folder.path()), UnreadableInput);
    CHECK_THROWS_AS(exchange::readInputFile(folder.path() / "none"), UnreadableInput);
}
