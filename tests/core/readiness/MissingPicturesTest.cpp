// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/MissingPictures.h"

#include "core/readiness/Readiness.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <vector>

using namespace lastrivet;
using namespace lastrivet::test;
using readiness::MissingPictures;
using readiness::Rule;

namespace {

struct Wing : ProjectBuilder {
    Wing() { profile.interior_photos = 2; }
    MissingPictures missing() const
    {
        return readiness::missingPictures(records,
                                          readiness::readiness(records, profile, on("2026-05-01")));
    }

    Id<Component> wing = part("Wing");
    Id<Component> rib = part("Rib", wing);
    Id<Component> tip = part("Tip", wing);
    Id<Closing> box = closing(wing);
};

} // namespace

TEST_CASE("Nothing is missing where no work was done yet")
{
    const Wing project;
    CHECK(project.missing().closings.empty());
    CHECK(project.missing().parts.empty());
}

TEST_CASE("A closing lacks photographs up to the profile's number, and newer ones after new work")
{
    Wing project;
    using List = std::vector<MissingPictures::OfClosing>;
    project.session(project.rib, "2026-03-01", 60);
    CHECK(project.missing().closings == List{{project.box, {Rule::TooFewPhotos}, 0}});
    project.photo("2026-03-02", {{RecordType::Closing, project.box.value()}});
    CHECK(project.missing().closings == List{{project.box, {Rule::TooFewPhotos}, 1}});
    project.photo("2026-03-02", {{RecordType::Component, project.rib.value()}});
    CHECK(project.missing().closings.empty());
    project.session(project.rib, "2026-03-05", 60);
    CHECK(project.missing().closings == List{{project.box, {Rule::StalePhotos}, 2}});
}

TEST_CASE("A closing with too few photographs, all older than its work, is listed once")
{
    Wing project;
    project.photo("2026-03-02", {{RecordType::Closing, project.box.value()}});
    project.session(project.rib, "2026-03-05", 60);
    const auto lacking = project.missing().closings;
    REQUIRE(lacking.size() == 1);
    CHECK(lacking.front().have == 1);
    CHECK(std::ranges::is_permutation(lacking.front().rules,
                                      std::vector{Rule::StalePhotos, Rule::TooFewPhotos}));
}

TEST_CASE("A part that was worked on lacks a picture until it or something below it has one")
{
    Wing project;
    using Parts = std::vector<Id<Component>>;
    project.session(project.rib, "2026-03-01", 60);
    project.session(project.tip, "2026-03-01", 60);
    CHECK(project.missing().parts == Parts{project.rib, project.tip});
    const auto photo = project.photo("2026-03-02", {{RecordType::Component, project.rib.value()}});
    CHECK(project.missing().parts == Parts{project.tip});
    project.change(photo, [](Media &media) { media.shows = {Shows::Exterior}; });
    CHECK(project.missing().parts == Parts{project.rib, project.tip});
    project.change(project.box, [](Closing &closing) { closing.permanent = false; });
    CHECK(project.missing().parts.empty());
}

TEST_CASE("What is closed can be photographed no more and is not listed")
{
    Wing project;
    project.session(project.rib, "2026-03-01", 60);
    project.change(project.box, [](Closing &closing) {
        closing.events.push_back({.closed_on = on("2026-04-01")});
    });
    CHECK(project.missing().closings.empty());
    CHECK(project.missing().parts.empty());
}

TEST_CASE("Photos that belong nowhere are named")
{
    Wing project;
    const auto stray = project.photo("2026-03-02", {});
    project.photo("2026-03-02", {{RecordType::Component, project.rib.value()}});
    CHECK(project.missing().unassigned == std::vector{stray});
}

TEST_CASE("A picture of a part below shows the part around it too")
{
    Wing project;
    project.session(project.wing, "2026-03-01", 60);
    CHECK(project.missing().parts == std::vector{project.wing});
    project.photo("2026-03-02", {{RecordType::Component, project.rib.value()}});
    CHECK(project.missing().parts.empty());
}
