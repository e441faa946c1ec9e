// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/profiles/ProfileLibrary.h"
#include "core/base/Error.h"
#include "core/profiles/ProfileJson.h"

#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <unistd.h>

using namespace lastrivet;
namespace fs = std::filesystem;

namespace {

const fs::path shipped = LASTRIVET_SOURCE "/resources/profiles";

/// A folder that is gone with the test.
class Folder {
public:
    Folder() { fs::create_directories(path); }
    ~Folder() { fs::remove_all(path); }
    Folder(const Folder &) = delete;
    Folder &operator=(const Folder &) = delete;

    const fs::path path =
        fs::temp_directory_path() / ("lastrivet-profiles-" + std::to_string(::getpid()));
};

std::string faultOf(const ProfileLibrary &library, std::string_view id)
{
    try {
        library.profile(id);
    } catch (const UnreadableInput &fault) {
        return fault.what();
    }
    return {};
}

} // namespace

TEST_CASE("The profiles that come with the program are found")
{
    const ProfileLibrary library = ProfileLibrary::standard();
    CHECK(library.ids() == std::vector<std::string>{"ca", "gb", "plain", "us"});
    CHECK(library.profile("gb").name == "United Kingdom");
}

TEST_CASE("A profile of one's own goes before the shipped one of its id")
{
    const Folder own;
    Profile mine = ProfileLibrary({shipped}).profile("plain");
    mine.name = "My workshop";
    std::ofstream(own.path / "plain.json") << profileJson(mine);
    const ProfileLibrary library({own.path, shipped});

    CHECK(library.profile("plain").name == "My workshop");
    CHECK(library.profile("ca").name == "Canada");
    CHECK(library.ids() == std::vector<std::string>{"ca", "gb", "plain", "us"});
}

TEST_CASE("An id that no folder has is told with those there are")
{
    const ProfileLibrary library({shipped, "/no/such/folder"});
    CHECK_FALSE(library.find("zz"));
    CHECK(faultOf(library, "zz") ==
          "There is no rule profile \"zz\"; there are: ca, gb, plain, us.");
    CHECK_FALSE(library.find("../profiles/ca"));
    CHECK_FALSE(library.find(""));
}

TEST_CASE("A profile file that cannot be read says which file and why")
{
    const Folder own;
    const ProfileLibrary library({own.path});
    std::ofstream(own.path / "torn.json") << "{\"id\": \"to";
    fs::copy_file(shipped / "ca.json", own.path / "other.json");
    fs::create_directories(own.path / "folder.json");
    std::ofstream(own.path / "long.json") << std::string(1024 * 1024 + 2, ' ');

    const std::string place = own.path.string();
    CHECK(faultOf(library, "torn").starts_with(place + "/torn.json is not JSON at line 1"));
    CHECK(faultOf(library, "other") ==
          place + "/other.json: /id is \"ca\", not what the file is called.");
    CHECK(faultOf(library, "folder") == place + "/folder.json could not be read.");
    CHECK(faultOf(library, "long") == place + "/long.json is longer than 1 MiB.");
    CHECK_THROWS_AS(readProfileFile(own.path / "none.json"), UnreadableInput);
}
