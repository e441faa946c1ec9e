// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/HeldDocument.h"

#include "core/base/Error.h"
#include "core/base/TemporaryFolder.h"
#include "core/evidence/files/SummedFolder.h"
#include "ui/print/NewFile.h"

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

using namespace lastrivet;
namespace fs = std::filesystem;

namespace {

void put(const fs::path &place, const std::string &text)
{
    print::NewFile file(place);
    file.write(reinterpret_cast<const unsigned char *>(text.data()), text.size());
    file.finish();
}

std::string textOf(const fs::path &place)
{
    std::ifstream stream(place, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

std::ptrdiff_t entriesOf(const fs::path &folder)
{
    return std::distance(fs::directory_iterator(folder), fs::directory_iterator());
}

} // namespace

TEST_CASE("A held document takes the place of an older one when it is published, else of nothing")
{
    const TemporaryFolder folder;
    const fs::path place = folder / "paper.pdf";
    put(place, "older");
    {
        print::HeldDocument document(place);
        document.make([&] { put(document.path(), "newer"); });
        CHECK(textOf(place) == "older");
        SECTION("published")
        {
            document.publish();
            CHECK(textOf(place) == "newer");
        }
        SECTION("given up") {}
    }
    CHECK(entriesOf(folder.path()) == 1);
}

TEST_CASE("A held folder appears with all that is in it, also over an empty one")
{
    const TemporaryFolder folder;
    const fs::path place = folder / "Packet";
    fs::create_directory(place);
    print::HeldDocument document(place / "");
    document.make([&] {
        evidence::SummedFolder made(document.path());
        made.addBy("a.pdf", [](const fs::path &file) { put(file, "a"); });
        made.finish();
    });
    document.publish();
    CHECK(textOf(place / "a.pdf") == "a");
    CHECK(entriesOf(folder.path()) == 1);
}

TEST_CASE("What goes wrong with a held document is told of its place")
{
    const TemporaryFolder folder;
    const fs::path place = folder / "none/paper.pdf";
    const print::HeldDocument document(place);
    try {
        document.make([&] { put(document.path(), "x"); });
        FAIL("nothing was told");
    } catch (const NotSaved &fault) {
        CHECK(std::string(fault.what()).starts_with(place.string() + " was not written"));
    }
}

TEST_CASE("A document that cannot get its name is not lost")
{
    const TemporaryFolder folder;
    const fs::path place = folder / "paper.pdf";
    std::string held;
    {
        print::HeldDocument document(place);
        document.make([&] { put(document.path(), "made"); });
        held = document.path().filename().string();
        fs::create_directories(place / "in the way");
        CHECK_THROWS_WITH(document.publish(), Catch::Contains(held));
    }
    CHECK(textOf(folder / held) == "made");
}
