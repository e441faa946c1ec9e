// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/starters/Starter.h"

#include "core/base/Error.h"
#include "core/profiles/ProfileLibrary.h"
#include "core/project/Project.h"
#include "core/readiness/Readiness.h"
#include "core/starters/Planting.h"
#include "core/starters/StarterLibrary.h"
#include "tests/support/FakeClock.h"
#include "tests/support/TemporaryFolder.h"

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet {

namespace {

/// A fresh project in which a starter was planted.
struct Planted {
    test::TemporaryFolder place;
    test::FakeClock clock;
    std::unique_ptr<Project> project;

    Planted(const Starter &starter, const Profile &profile, const Planting &how = {})
    {
        ProjectFacts facts;
        facts.name = "New aeroplane";
        facts.profile = profile.id;
        project = Project::create(place / "New.lastrivet", facts, profile, {&clock, "Builder"});
        const auto result =
            project->change("Starter planted", [&](Edit &edit) { plant(edit, starter, how); });
        INFO((result ? std::string() : english(result.reason())));
        REQUIRE(result);
    }
};

const Component *partOfCode(const Records &records, std::string_view code)
{
    for (const Component &part : records.components) {
        if (part.code == code)
            return &part;
    }
    return nullptr;
}

} // namespace

TEST_CASE("Every starter goes into a project under every profile")
{
    const auto library = ProfileLibrary::standard();
    const auto starters = standardStarters();
    REQUIRE(starters.size() == 5);
    for (const std::string &id : library.ids()) {
        const Profile profile = library.profile(id);
        for (const Starter &starter : starters) {
            INFO(starter.id << " under " << id);
            const Planted planted(starter, profile);
            const Records &records = *planted.project->records();
            CHECK(records.components.size() > 30);
            CHECK(records.closings.size() == starter.closings.size());
            CHECK(records.closings.size() > 3);
            const auto answer = readiness::readiness(records, profile, planted.project->today());
            CHECK(answer.to_complete.empty());
            CHECK(answer.out_of_reach.empty());
            for (const auto &closing : answer.closings)
                CHECK_FALSE(closing.begun);
        }
    }
}

TEST_CASE("Every closing of a starter encloses a part, and has hold points and lines to look at")
{
    const Profile profile = ProfileLibrary::standard().profile("ca");
    for (const Starter &starter : standardStarters()) {
        const Planted planted(starter, profile);
        const Records &records = *planted.project->records();
        for (const Closing &closing : records.closings) {
            INFO(starter.id << ": " << closing.title);
            CHECK((closing.scope == ClosingScope::Aircraft) == closing.encloses.empty());
            const auto isOf = [&](const auto &record) { return record.closing_id == closing.id; };
            CHECK(std::any_of(records.hold_points.begin(), records.hold_points.end(), isOf));
            CHECK(std::any_of(records.checks.begin(), records.checks.end(), isOf));
        }
    }
}

TEST_CASE("On a fresh project only what every closing asks for stands in the way")
{
    using readiness::Rule;
    const Profile profile = ProfileLibrary::standard().profile("ca");
    for (const Starter &starter : standardStarters()) {
        const Planted planted(starter, profile);
        const Records &records = *planted.project->records();
        const auto answer = readiness::readiness(records, profile, planted.project->today());
        for (const auto &closing : answer.closings) {
            for (const auto &blocker : closing.blockers) {
                INFO(starter.id << ": " << word(blocker.rule));
                const bool isExpected =
                    blocker.rule == Rule::UnsignedHoldPoint ||
                    blocker.rule == Rule::UntickedCheck || blocker.rule == Rule::ThinRecord ||
                    blocker.rule == Rule::TooFewPhotos || blocker.rule == Rule::InnerClosingOpen;
                CHECK(isExpected);
            }
        }
    }
}

TEST_CASE("Left-out parts take what is inside them and their closings along")
{
    const auto starters = standardStarters();
    const auto wood = std::ranges::find(starters, "wood", &Starter::id);
    REQUIRE(wood != starters.end());
    const Profile profile = ProfileLibrary::standard().profile("plain");
    const Planted planted(*wood, profile, {{"LW", "EV"}, {}});
    const Records &records = *planted.project->records();
    CHECK_FALSE(partOfCode(records, "LW"));
    CHECK_FALSE(partOfCode(records, "LW-SP"));
    CHECK(partOfCode(records, "RW-SP"));
    for (const Closing &closing : records.closings) {
        INFO(closing.title);
        CHECK(closing.title.find("Left wing") == std::string::npos);
        CHECK(closing.title.find("Elevator") == std::string::npos);
    }
}

TEST_CASE("A starter speaks the language of whoever begins")
{
    const auto starters = standardStarters();
    const Profile profile = ProfileLibrary::standard().profile("plain");
    const Planted planted(starters.front(), profile,
                          {{}, [](const std::string &text) { return "«" + text + "»"; }});
    const Records &records = *planted.project->records();
    const auto isSaid = [](const std::string &text) { return text.starts_with("«"); };
    for (const Component &part : records.components) {
        CHECK(isSaid(part.name));
        CHECK(isSaid(part.zone) != part.zone.empty());
        CHECK(isSaid(part.never_enclosed_why) != part.never_enclosed_why.empty());
    }
    for (const Closing &closing : records.closings) {
        CHECK(isSaid(closing.title));
        CHECK(isSaid(closing.method) != closing.method.empty());
    }
    // Lines of the profile's lists are said in the reader's language wherever they are shown.
    const auto isOwn = [&](const Check &check) { return isSaid(check.item); };
    CHECK(std::any_of(records.checks.begin(), records.checks.end(), isOwn));
    for (const Check &check : records.checks)
        CHECK(isSaid(check.source) == isOwn(check));
}

TEST_CASE("What is no starter is refused in one sentence")
{
    const auto wrong = GENERATE(
        as<std::string>(), "", "[]", R"({"id": "x"})",
        R"({"id": "x", "title": "X", "parts": [{"code": "A"}]})",
        R"({"id": "x", "title": "X", "parts": [{"code": "A", "name": "A", "kind": "bird"}]})",
        R"({"id": "x", "title": "X", "parts": [{"code": "A", "name": "A", "colour": "red"}]})",
        R"({"id": "x", "title": "X", "parts": [{"code": "A", "name": "A"}, {"code": "A", "name": "B"}]})",
        R"({"id": "x", "title": "X", "closings": [{"title": "T", "part": "A"}]})");
    CHECK_THROWS_AS(readStarter(wrong), UnreadableInput);
}

} // namespace lastrivet
