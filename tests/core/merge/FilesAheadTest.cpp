// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/FilesAhead.h"

#include "core/base/Error.h"
#include "core/evidence/IntakeStore.h"
#include "core/evidence/MediaFile.h"
#include "tests/support/ProjectCopies.h"
#include "tests/support/TestPictures.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using test::ProjectCopy;

namespace {

/// A project, and a copy of it that took a photograph in.
struct WithPhoto {
    ProjectCopy robin{"Robin"};
    Id<Component> wing;
    std::unique_ptr<ProjectCopy> kim;
    std::string file;

    WithPhoto()
    {
        robin.change("A beginning", [this](Edit &edit) {
            Component part;
            part.name = "Wing";
            wing = edit.put(part);
        });
        kim = std::make_unique<ProjectCopy>(robin, "Kim");
        kim->clock().advance(std::chrono::minutes{5});
        const auto report = evidence::takeIn(**kim,
                                             {{test::testPicture("grey.jpg"),
                                               {},
                                               {{RecordType::Component, wing.value()}},
                                               {},
                                               {},
                                               {}}},
                                             1, {}, {}, ChangeKind::Change);
        REQUIRE(report.taken.size() == 1);
        file = (*kim)->records()->media.begin()->file;
    }
    bool isThere() const { return std::filesystem::exists(robin.folder() / file); }
};

} // namespace

TEST_CASE("Files that a merge will name are copied ahead of it, and the merge finds them there")
{
    WithPhoto two;
    merge::FilesAhead files(two.robin.folder(), two.kim->folder());
    std::size_t looked = 0;
    REQUIRE(files.bring([&](std::size_t done, std::size_t total) {
        CHECK(done <= total);
        return ++looked > 0;
    }));
    CHECK(looked == 1);
    CHECK(files.copied() == 1);
    CHECK(two.isThere());
    // Nothing is merged yet.
    CHECK(two.robin->records()->media.isEmpty());
    const auto report = two.robin.merge(*two.kim);
    CHECK(report.files == 0);
    CHECK(report.missing_files.empty());
    CHECK(two.robin->records()->media.size() == 1);
}

TEST_CASE("Files that were copied ahead go again when the merge does not happen")
{
    WithPhoto two;
    {
        merge::FilesAhead files(two.robin.folder(), two.kim->folder());
        REQUIRE(files.bring());
        REQUIRE(two.isThere());
    }
    CHECK_FALSE(two.isThere());
    {
        merge::FilesAhead files(two.robin.folder(), two.kim->folder());
        CHECK_FALSE(files.bring([](std::size_t, std::size_t) { return false; }));
    }
    CHECK_FALSE(two.isThere());
    {
        merge::FilesAhead files(two.robin.folder(), two.kim->folder());
        REQUIRE(files.bring());
        files.stay();
    }
    CHECK(two.isThere());
}

TEST_CASE("A file that was there before stays when copying ahead is given up")
{
    WithPhoto two;
    two.robin.merge(*two.kim);
    REQUIRE(two.isThere());
    {
        merge::FilesAhead files(two.robin.folder(), two.kim->folder());
        REQUIRE(files.bring());
        CHECK(files.copied() == 0);
    }
    CHECK(two.isThere());
}

TEST_CASE("A file that a merge put on record meanwhile stays when copying ahead is given up")
{
    WithPhoto two;
    {
        merge::FilesAhead files(two.robin.folder(), two.kim->folder());
        REQUIRE(files.bring());
        REQUIRE(files.copied() == 1);
        two.robin.merge(*two.kim);
    }
    CHECK(two.isThere());
}

TEST_CASE("A merge that cannot copy every file leaves none behind")
{
    WithPhoto two;
    evidence::IncomingFile paper;
    paper.path = two.kim->folder().parent_path() / "note.pdf";
    test::writeText(paper.path, "%PDF-1.4\n" + std::string(3000, 'x') + "\n%%EOF\n");
    REQUIRE(evidence::takeIn(**two.kim, {paper}).taken.size() == 1);
    const auto documents = two.robin.folder() / "documents";
    std::filesystem::remove(documents);
    test::writeText(documents, "in the way");
    CHECK_THROWS_AS(two.robin->merge(two.kim->folder()), Fault);
    CHECK_FALSE(two.isThere());
    std::filesystem::remove(documents);
    CHECK(two.robin.merge(*two.kim).files == 2);
    CHECK(two.isThere());
}

TEST_CASE("Files that were copied ahead go again when the merge that found them there fails")
{
    WithPhoto two;
    evidence::IncomingFile paper;
    paper.path = two.kim->folder().parent_path() / "note.pdf";
    test::writeText(paper.path, "%PDF-1.4\n" + std::string(3000, 'x') + "\n%%EOF\n");
    REQUIRE(evidence::takeIn(**two.kim, {paper}).taken.size() == 1);
    const auto documents = two.robin.folder() / "documents";
    {
        merge::FilesAhead files(two.robin.folder(), two.kim->folder());
        REQUIRE(files.bring());
        REQUIRE(files.copied() == 2);
        std::filesystem::remove_all(documents);
        test::writeText(documents, "in the way");
        CHECK_THROWS_AS(two.robin->merge(two.kim->folder()), Fault);
        CHECK(two.isThere());
    }
    CHECK_FALSE(two.isThere());
    CHECK(two.robin->records()->media.isEmpty());
}

TEST_CASE("Nothing is copied ahead from what is no copy of the project")
{
    WithPhoto two;
    ProjectCopy stranger("Nobody");
    merge::FilesAhead files(two.robin.folder(), stranger.folder());
    CHECK_THROWS_AS(files.bring(), UnreadableInput);
    CHECK(files.copied() == 0);
}
