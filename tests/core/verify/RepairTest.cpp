// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/verify/Repair.h"

#include "core/base/Error.h"
#include "core/base/Sha256.h"
#include "core/verify/OpeningCheck.h"
#include "tests/support/TestPictures.h"
#include "tests/support/TestProject.h"

#include <unistd.h>

#include <catch2/catch.hpp>

#include <algorithm>
#include <map>

using namespace lastrivet;
namespace fs = std::filesystem;

namespace {

void writeTo(const fs::path &file, std::string_view bytes)
{
    fs::create_directories(file.parent_path());
    test::writeText(file, bytes);
}

/// A project with a part and a photo.
struct Fixture {
    Fixture()
    {
        wing = project.part("Wing");
        addPhoto("photos/wing.jpg", test::readText(test::testPicture("plain.jpg")));
    }

    void addPhoto(const std::string &file, const std::string &content)
    {
        writeTo(project.folder() / file, content);
        Sha256 sum;
        sum.add(content);
        Media media;
        media.file = file;
        media.sha256 = hex(sum.digest());
        project.change("Photo", [&](Edit &edit) { edit.put(media); });
    }
    /// Every file but the cache, the database and the lock, with what is in it.
    std::map<std::string, std::string> kept() const
    {
        std::map<std::string, std::string> files;
        for (const auto &entry : fs::recursive_directory_iterator(project.folder())) {
            const auto name = entry.path().lexically_relative(project.folder()).generic_string();
            if (entry.is_regular_file() && !name.starts_with("records.") &&
                !name.starts_with("cache/"))
                files[name] = test::readText(entry.path());
        }
        return files;
    }

    test::TestProject project;
    Id<Component> wing;
};

bool says(const std::vector<Message> &sentences, std::string_view words)
{
    return std::ranges::any_of(sentences, [&](const Message &sentence) {
        return english(sentence).find(words) != std::string::npos;
    });
}

} // namespace

TEST_CASE("Repair makes search and small pictures anew, removes half-written files, and no more")
{
    Fixture fixture;
    const auto records = fixture.project->records();
    const auto hash = fixture.project->journalHash();
    fixture.project.close();
    const auto folder = fixture.project.folder();
    const auto kept = fixture.kept();
    fixture.project.tamper(R"(DELETE FROM search; INSERT INTO search (rowid,title,body)
                              VALUES (99,'Nothing','that is there'))");
    writeTo(folder / "photos/2026/.tmp-4711-1", "half a pho");
    writeTo(folder / "backups/.tmp-4711-records.db", "half a copy");
    writeTo(folder / "cache/ab/old.jpg", "of a photo that is gone");
    const auto before = verify(folder).findings;
    CHECK(std::ranges::count(before, "search", &Finding::what) >= 2);
    CHECK(std::ranges::count(before, "file", &Finding::what) == 2);

    const auto repaired = repair(folder);
    CHECK(repaired.after.findings == std::vector<Finding>{});
    CHECK(says(repaired.done, "Removed the half-written file photos/2026/.tmp-4711-1."));
    CHECK(says(repaired.done, "Made the search index anew"));
    CHECK(says(repaired.done, "of 1 of 1 photos anew"));
    CHECK(fixture.kept() == kept);
    CHECK_FALSE(fs::exists(folder / "cache/ab/old.jpg"));
    fixture.project.reopen();
    CHECK(*fixture.project->records() == *records);
    CHECK(fixture.project->journalHash() == hash);
    CHECK(fixture.project->search("wing").size() >= 1);
}

TEST_CASE("Repair mends nothing of records, journal, photos and papers; the damage is told")
{
    Fixture fixture;
    fixture.project.close();
    const auto folder = fixture.project.folder();
    writeTo(folder / "photos/wing.jpg", "no longer a picture");
    writeTo(folder / "documents/stray.pdf", "?");
    fixture.project.tamper("UPDATE component SET name='Tail'");
    const auto kept = fixture.kept();
    const auto repaired = repair(folder);
    CHECK(repaired.after.findings.size() == 3);
    CHECK(says(repaired.done, "of 0 of 1 photos anew"));
    CHECK(fixture.kept() == kept);
    CHECK(verify(folder).findings == repaired.after.findings);
}

TEST_CASE("A damaged database is left as it is, and nothing is made from it")
{
    Fixture fixture;
    for (int i = 0; i < 300; ++i)
        fixture.project.part("Part number " + std::to_string(i));
    fixture.project.close();
    const auto database = fixture.project.database();
    CHECK(damagesAtOpening(fixture.project.folder()).empty());
    auto broken = test::readText(database);
    // A page full of rows, which the quick look at opening reads too.
    const auto at = broken.rfind("Part number 299") / 4096 * 4096;
    std::fill_n(broken.begin() + std::ptrdiff_t(at), 64, '\xff');
    writeTo(database, broken);
    CHECK_FALSE(damagesAtOpening(fixture.project.folder()).empty());
    const auto repaired = repair(fixture.project.folder());
    CHECK_FALSE(repaired.after.isFaultless());
    CHECK(repaired.done.size() == 1);
    CHECK(test::readText(database) == broken);
}

TEST_CASE("A project that this program has open is repaired beside it, and can be gone on with")
{
    Fixture fixture;
    fixture.project.tamper("DELETE FROM search");
    CHECK(fixture.project->search("wing").empty());
    test::writeText(fixture.project.folder() / (".tmp-" + std::to_string(::getpid()) + "-7"), "?");
    const auto repaired = repair(fixture.project.folder(), {}, Writer::ThisProgram);
    CHECK(repaired.after.findings == std::vector<Finding>{});
    CHECK_FALSE(says(repaired.done, "Removed"));
    // The part, and the photo by its file.
    CHECK(fixture.project->search("wing").size() == 2);
    fixture.project.part("Wing tip");
    CHECK(fixture.project->search("wing").size() == 3);
    CHECK(verify(fixture.project.folder()).isFaultless());
}

TEST_CASE("A project that another program has open is not repaired")
{
    Fixture fixture;
    CHECK_THROWS_AS(repair(fixture.project.folder()), NotWritable);
    for (const std::string &says :
         {std::string("Nothing was mended. "),
          std::string(" has the project open for writing since "), std::to_string(::getpid())})
        CHECK_THROWS_WITH(repair(fixture.project.folder()), Catch::Contains(says));
    CHECK_THROWS_AS(repair(fixture.project.folder().parent_path()), UnreadableInput);
}

TEST_CASE("The look at opening names dangling references and tables that somebody altered")
{
    Fixture fixture;
    const auto folder = fixture.project.folder();
    CHECK(damagesAtOpening(folder).empty());
    fixture.project.close();
    fixture.project.tamper("PRAGMA foreign_keys=OFF; UPDATE component SET parent_id=12345;"
                           "CREATE TRIGGER t AFTER INSERT ON squawk BEGIN DELETE FROM person; END");
    const auto damages = damagesAtOpening(folder);
    REQUIRE(damages.size() == 2);
    CHECK_THAT(english(damages[0]), Catch::Contains("names a component that does not exist"));
    CHECK_THAT(english(damages[1]), Catch::Contains("trigger t"));
    CHECK(damagesAtOpening(folder / "nowhere").size() == 1);
}

TEST_CASE("The look at opening ends when it is told to")
{
    Fixture fixture;
    std::stop_source stop;
    stop.request_stop();
    fixture.project.close();
    fixture.project.tamper("PRAGMA foreign_keys=OFF; UPDATE component SET parent_id=12345");
    CHECK(damagesAtOpening(fixture.project.folder(), stop.get_token()).empty());
}
