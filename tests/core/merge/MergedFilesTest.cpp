// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Sha256.h"
#include "core/evidence/IntakeStore.h"
#include "tests/support/TestPictures.h"
#include "tests/support/TwoCopies.h"

#include <catch2/catch.hpp>

#include <cstdint>
#include <fstream>
#include <set>
#include <string>
#include <string_view>

using namespace lastrivet;
using test::ProjectCopy;
using test::TwoCopies;

namespace {

std::string read(const std::filesystem::path &file)
{
    const auto bytes = test::readBytes(file);
    return {bytes.begin(), bytes.end()};
}

std::string sumOf(const std::string &content)
{
    return sha256({reinterpret_cast<const std::uint8_t *>(content.data()), content.size()});
}

/// A photograph of this name in the copy's folder and on its record.
Id<Media> takeIn(TwoCopies &two, ProjectCopy &copy, const std::string &content,
                 const std::string &sum)
{
    std::filesystem::create_directories(copy.folder() / "photos");
    std::ofstream(copy.folder() / "photos/rib.jpg", std::ios::binary) << content;
    two.later(copy);
    Id<Media> id;
    copy.change("Photo", [&](Edit &edit) {
        Media media;
        media.kind = MediaKind::Photo;
        media.file = "photos/rib.jpg";
        media.caption = content;
        media.sha256 = sum;
        media.bytes = std::int64_t(content.size());
        id = edit.put(media);
    });
    return id;
}

Id<Media> takeIn(TwoCopies &two, ProjectCopy &copy, const std::string &content)
{
    return takeIn(two, copy, content, sumOf(content));
}

/// The captions say what is in the files.
void checkFile(ProjectCopy &copy, Id<Media> id)
{
    const auto *media = copy->records()->find(id);
    REQUIRE(media);
    CHECK(read(copy.folder() / media->file) == media->caption);
}

} // namespace

TEST_CASE("Two photographs of one name are both there after a merge, each under its own")
{
    // Of what came by a document the sum may not be known.
    const bool isFirstSummed = GENERATE(true, false);
    const bool isSecondSummed = GENERATE(true, false);
    TwoCopies two;
    const auto first =
        takeIn(two, two.robin, "of Robin", isFirstSummed ? sumOf("of Robin") : std::string());
    const auto second =
        takeIn(two, two.kim(), "of Kim", isSecondSummed ? sumOf("of Kim") : std::string());
    two.mergeBoth();
    for (auto *copy : {&two.robin, &two.kim()}) {
        std::set<std::string> names;
        for (const auto id : {first, second}) {
            const auto *media = (*copy)->records()->find(id);
            REQUIRE(media);
            names.insert(media->file);
            CHECK(read(copy->folder() / media->file) == media->caption);
        }
        CHECK(names.size() == 2);
    }
}

TEST_CASE("A file that is not what its record says is not brought by a merge, and told")
{
    TwoCopies two;
    const auto id = takeIn(two, two.kim(), "of Kim");
    std::ofstream(two.kim().folder() / "photos/rib.jpg", std::ios::binary) << "no more";
    const auto report = two.robin.merge(two.kim());
    CHECK(report.files == 0);
    CHECK(report.missing_files == std::vector<std::string>{"photos/rib.jpg"});
    REQUIRE(two.robin->records()->find(id));
    CHECK_FALSE(std::filesystem::exists(two.robin.folder() / "photos/rib.jpg"));
}

TEST_CASE("Certificate documents of one number keep it: it is the authority's, not ours")
{
    TwoCopies two;
    std::vector<Id<CertificateDocument>> papers;
    for (auto *copy : {&two.robin, &two.kim()}) {
        two.later(*copy);
        copy->change("Paper", [&](Edit &edit) {
            CertificateDocument paper;
            paper.key = copy == &two.robin ? "registration" : "noise";
            paper.number = "T-100";
            papers.push_back(edit.put(paper));
        });
    }
    two.mergeBoth();
    for (const auto id : papers) {
        const auto *paper = two.robin->records()->find(id);
        REQUIRE(paper);
        CHECK(paper->number == "T-100");
    }
}

TEST_CASE("A photograph that both took in is found by its sum under either one's record")
{
    TwoCopies two;
    const auto id = takeIn(two, two.robin, "of both");
    takeIn(two, two.kim(), "of both");
    std::filesystem::remove(two.robin.folder() / "photos/rib.jpg");
    const auto report = two.robin.merge(two.kim());
    CHECK(report.files == 1);
    CHECK(report.missing_files.empty());
    const auto *media = two.robin->records()->find(id);
    REQUIRE(media);
    CHECK(read(two.robin.folder() / media->file) == "of both");
}

TEST_CASE("A merge does not tell of a file that was missing before")
{
    TwoCopies two;
    takeIn(two, two.robin, "of Robin");
    std::filesystem::remove(two.robin.folder() / "photos/rib.jpg");
    two.rename(two.kim(), "Left wing");
    CHECK(two.robin.merge(two.kim()).missing_files.empty());
}

TEST_CASE(
    "A picture that was left out and one of the same name are each its own, and when let in too")
{
    const bool isSummed = GENERATE(true, false);
    const auto sum = [&](const std::string &content) {
        return isSummed ? sumOf(content) : std::string();
    };
    TwoCopies two;
    const auto rib = two.part(two.robin, "Rib three", "R3");
    const auto ofRobin = takeIn(two, two.robin, "of Robin", sum("of Robin"));
    const auto spar = two.part(two.kim(), "Spar");
    std::filesystem::create_directories(two.kim().folder() / "photos");
    std::ofstream(two.kim().folder() / "photos/rib.jpg", std::ios::binary) << "of Kim";
    two.later(two.kim());
    Id<Media> ofKim;
    two.kim().change("Spar coded", [&](Edit &edit) {
        edit.update(spar, [](Component &part) { part.code = "R3"; });
        Media media;
        media.kind = MediaKind::Photo;
        media.file = "photos/rib.jpg";
        media.caption = "of Kim";
        media.sha256 = sum("of Kim");
        ofKim = edit.put(media);
    });
    two.mergeBoth();
    for (auto *copy : {&two.robin, &two.kim()}) {
        CHECK_FALSE((*copy)->records()->find(ofKim));
        checkFile(*copy, ofRobin);
    }
    const auto conflicts = two.robin->conflicts();
    REQUIRE(conflicts.size() == 1);
    two.later(two.robin);
    two.robin.change("Another code", [&](Edit &edit) {
        edit.update(rib, [](Component &part) { part.code = "R3a"; });
    });
    two.later(two.robin);
    REQUIRE(two.robin->decide(conflicts.front().id, ConflictDecision::Taken));
    checkFile(two.robin, ofKim);
    two.mergeBoth();
    for (auto *copy : {&two.robin, &two.kim()}) {
        checkFile(*copy, ofRobin);
        checkFile(*copy, ofKim);
    }
}

TEST_CASE("The picture of a change that was left out comes with the merge, for when it is let in")
{
    TwoCopies two;
    const auto rib = two.part(two.robin, "Rib three", "R3");
    const std::filesystem::path file = "photos/spar.jpg";
    std::filesystem::create_directories(two.kim().folder() / "photos");
    std::ofstream(two.kim().folder() / file, std::ios::binary) << "of the spar";
    two.later(two.kim());
    Id<Media> picture;
    two.kim().change("Spar made", [&](Edit &edit) {
        Component part;
        part.name = "Spar";
        part.code = "R3";
        Media media;
        media.kind = MediaKind::Photo;
        media.links = {{RecordType::Component, edit.put(part).value()}};
        media.file = file.generic_string();
        media.sha256 = sumOf("of the spar");
        media.bytes = std::int64_t(std::string_view("of the spar").size());
        picture = edit.put(media);
    });
    const auto report = two.robin.merge(two.kim());
    REQUIRE(report.conflicts.size() == 1);
    CHECK(report.files == 1);
    CHECK(report.missing_files.empty());
    CHECK_FALSE(two.robin->records()->find(picture));
    two.later(two.robin);
    two.robin.change("Another code", [&](Edit &edit) {
        edit.update(rib, [](Component &part) { part.code = "R3a"; });
    });
    REQUIRE(two.robin->decide(report.conflicts.front(), ConflictDecision::Taken));
    REQUIRE(two.robin->records()->find(picture));
    CHECK(read(two.robin.folder() / two.robin->records()->find(picture)->file) == "of the spar");
}
