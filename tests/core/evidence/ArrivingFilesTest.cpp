// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/ArrivingFiles.h"

#include "tests/support/PlainUser.h"
#include "tests/support/TemporaryFolder.h"

#include <catch2/catch.hpp>

#include <fstream>
#include <vector>

using namespace lastrivet;
using namespace lastrivet::evidence;
using namespace std::chrono_literals;

namespace fs = std::filesystem;

namespace {

struct Folder {
    fs::path write(std::string_view name, std::string_view content)
    {
        const fs::path file = folder / name;
        fs::create_directories(file.parent_path());
        std::ofstream(file, std::ios::binary) << content;
        return file;
    }
    std::vector<std::string> look(ArrivingFiles &arriving, std::chrono::seconds at)
    {
        std::vector<std::string> names;
        for (const fs::path &file :
             arriving.look(filesIn(folder.path()), ArrivingFiles::Clock::time_point(at)))
            names.push_back(file.filename().string());
        return names;
    }

    test::TemporaryFolder folder;
};

using Names = std::vector<std::string>;

} // namespace

TEST_CASE("A file has arrived when it stays the same for the settling time")
{
    Folder folder;
    ArrivingFiles arriving(folder.folder.path(), 2s);
    folder.write("a.jpg", "half");
    CHECK(folder.look(arriving, 10s).empty());
    CHECK(arriving.isWaiting());
    CHECK(folder.look(arriving, 11s).empty());
    folder.write("a.jpg", "half and more");
    CHECK(folder.look(arriving, 12s).empty());
    CHECK(folder.look(arriving, 13s).empty());
    CHECK(folder.look(arriving, 14s) == Names{"a.jpg"});
}

TEST_CASE("What was dealt with comes again only when it changes, also after a restart")
{
    Folder folder;
    folder.write("Camera/a.jpg", "one");
    std::string marks;
    {
        ArrivingFiles arriving(folder.folder.path(), 1s);
        folder.look(arriving, 1s);
        CHECK(folder.look(arriving, 2s) == Names{"a.jpg"});
        arriving.settleWith(filesIn(folder.folder.path()));
        CHECK_FALSE(arriving.isWaiting());
        CHECK(folder.look(arriving, 9s).empty());
        marks = arriving.marks();
    }
    ArrivingFiles arriving(folder.folder.path(), 1s);
    arriving.readMarks(marks);
    folder.look(arriving, 20s);
    CHECK(folder.look(arriving, 30s).empty());
    folder.write("Camera/a.jpg", "another picture");
    folder.look(arriving, 40s);
    CHECK(folder.look(arriving, 50s) == Names{"a.jpg"});
}

TEST_CASE("Marks of files that are gone are not kept, those of a folder that is away are")
{
    Folder folder;
    const fs::path a = folder.write("a.jpg", "one");
    folder.write("b.jpg", "two");
    ArrivingFiles arriving(folder.folder.path(), 1s);
    arriving.settleWith(filesIn(folder.folder.path()));
    folder.look(arriving, 1s);
    const std::string both = arriving.marks();
    fs::remove(a);
    folder.look(arriving, 2s);
    CHECK(arriving.marks().size() == both.size() / 2);
    ArrivingFiles away(folder.folder.path() / "unplugged", 1s);
    away.readMarks(both);
    away.look({}, ArrivingFiles::Clock::time_point(3s));
    CHECK(away.marks() == both);
}

TEST_CASE("What was dealt with in a folder that may not be read just now is not new afterwards")
{
    Folder folder;
    const fs::path camera = folder.write("Camera/a.jpg", "one").parent_path();
    const fs::path gone = folder.write("b.jpg", "two");
    folder.write("c.jpg", "three");
    ArrivingFiles arriving(folder.folder.path(), 1s);
    arriving.settleWith(filesIn(folder.folder.path()));
    folder.look(arriving, 1s);
    const std::string all = arriving.marks();
    auto seen = filesIn(folder.folder.path());
    std::erase_if(seen, [&](const SeenFile &file) { return file.path.parent_path() == camera; });
    seen.push_back({camera, 0, {}, true});
    CHECK(arriving.look(seen, ArrivingFiles::Clock::time_point(2s)).empty());
    CHECK_FALSE(arriving.isWaiting());
    CHECK(arriving.marks() == all);
    arriving.settleWith(seen);
    CHECK(arriving.marks() == all);
    fs::remove(gone);
    folder.look(arriving, 3s);
    CHECK(arriving.marks().size() == all.size() / 3 * 2);
}

TEST_CASE("A folder that may not be read is named in place of its files")
{
    Folder folder;
    fs::permissions(folder.folder.path(), fs::perms(0755));
    const fs::path closed = folder.write("closed/a.jpg", "one").parent_path();
    folder.write("b.jpg", "two");
    fs::permissions(closed, fs::perms::none);
    const auto seen = [&] {
        const test::PlainUser user;
        return filesIn(folder.folder.path());
    }();
    fs::permissions(closed, fs::perms::owner_all);
    REQUIRE(seen.size() == 2);
    for (const SeenFile &file : seen)
        CHECK(file.is_closed_folder == (file.path == closed));
}

TEST_CASE("Hidden files, empty files and links to folders are left")
{
    Folder folder;
    folder.write(".a.jpg.part", "one");
    folder.write(".trash/b.jpg", "two");
    folder.write("empty.jpg", "");
    folder.write("deep/er/c.jpg", "three");
    fs::create_directory_symlink(folder.folder.path() / "deep", folder.folder.path() / "again");
    ArrivingFiles arriving(folder.folder.path(), 1s);
    folder.look(arriving, 1s);
    CHECK(folder.look(arriving, 3s) == Names{"c.jpg"});
    CHECK(filesIn(folder.folder.path() / "not there").empty());
}
