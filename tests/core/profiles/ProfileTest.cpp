// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/profiles/Profile.h"
#include "core/base/Tongue.h"
#include "core/profiles/Citation.h"
#include "core/profiles/ProfileLibrary.h"
#include "core/records/Closing.h"

#include <catch2/catch.hpp>

#include <utility>

using namespace lastrivet;

namespace {

Profile shipped(std::string_view id)
{
    return ProfileLibrary({LASTRIVET_SOURCE "/resources/profiles"}).profile(id);
}

std::vector<HoldPointKind> holdPoints(const Profile &profile, const Closing &closing,
                                      WordSet<ComponentKind> inReach)
{
    std::vector<HoldPointKind> kinds;
    for (const Profile::HoldPointRule &rule : profile.hold_points) {
        if (rule.appliesTo(closing, inReach))
            kinds.push_back(rule.kind);
    }
    return kinds;
}

using Kinds = std::vector<HoldPointKind>;

} // namespace

TEST_CASE("A permanent region gets the hold points of its country")
{
    using enum HoldPointKind;
    const Closing closing;
    const WordSet<ComponentKind> wing{ComponentKind::LiftingSurface, ComponentKind::Part};

    CHECK(holdPoints(shipped("ca"), closing, wing) == Kinds{ToolAndDebrisCheck, PreCover});
    CHECK(holdPoints(shipped("gb"), closing, wing) == Kinds{ToolAndDebrisCheck, Stage});
    CHECK(holdPoints(shipped("plain"), closing, wing) == Kinds{ToolAndDebrisCheck, OwnCheck});
    CHECK(holdPoints(shipped("us"), closing, wing) ==
          Kinds{ToolAndDebrisCheck, OwnCheck, TechnicalVisit});
}

TEST_CASE("Who signs the hold points of a country, and whether he must, is as it was agreed")
{
    using enum SignerRole;
    const auto asked = [](std::string_view id, HoldPointKind kind) {
        for (const Profile::HoldPointRule &rule : shipped(id).hold_points) {
            if (rule.kind == kind)
                return std::pair{rule.signer_role, rule.required};
        }
        FAIL(id << " has no such hold point");
        return std::pair{Builder, false};
    };
    using enum HoldPointKind;
    for (const std::string_view id : {"ca", "us", "gb", "plain"})
        CHECK(asked(id, ToolAndDebrisCheck) == std::pair{Builder, true});
    CHECK(asked("ca", PreCover) == std::pair{Inspector, true});
    CHECK(asked("us", OwnCheck) == std::pair{Builder, true});
    CHECK(asked("us", TechnicalVisit) == std::pair{Adviser, false});
    CHECK(asked("gb", Stage) == std::pair{Inspector, true});
    CHECK(asked("plain", OwnCheck) == std::pair{Builder, true});
    for (const std::string_view id : {"ca", "us", "gb"})
        CHECK(asked(id, Final) == std::pair{Inspector, true});
    CHECK(asked("plain", Final) == std::pair{Builder, true});
}

TEST_CASE("Photographs, late acceptance, papers of a factory and credit are each country's own")
{
    using enum SignerRole;
    const auto all = WordSet<SignerRole>{Inspector, Adviser, Builder};
    for (const std::string_view id : {"ca", "us", "gb", "plain"}) {
        INFO(id);
        const Profile profile = shipped(id);
        CHECK(profile.interior_photos == (id == "plain" ? 1 : 2));
        const bool isInspectorAlone = id == "ca" || id == "gb";
        CHECK(profile.late_acceptance_by ==
              (isInspectorAlone ? WordSet<SignerRole>{Inspector} : all));
        CHECK(profile.factory_closing_needs_document == (id == "ca"));
        CHECK((profile.credit_basis == CreditBasis::Ticks) == (id == "ca"));
    }
}

TEST_CASE("The technical visit is asked for only where the reach holds a main structure")
{
    const Profile profile = shipped("us");
    const auto asked = [&](WordSet<ComponentKind> inReach) {
        return holdPoints(profile, Closing{}, inReach).size() == 3;
    };

    CHECK(asked({ComponentKind::ControlSurface}));
    CHECK(asked({ComponentKind::FuselageSection}));
    CHECK(asked({ComponentKind::FuelTank, ComponentKind::Electrical}));
    CHECK_FALSE(asked({ComponentKind::Cabin, ComponentKind::Electrical}));
    CHECK_FALSE(asked({}));
}

TEST_CASE("What opens again, and what a factory closed, gets no hold points")
{
    for (const std::string_view id : {"ca", "us", "gb", "plain"}) {
        const Profile profile = shipped(id);
        Closing hatch;
        hatch.permanent = false;
        CHECK(holdPoints(profile, hatch, {ComponentKind::FuelTank}).empty());
        Closing quickbuild;
        quickbuild.made_by = MadeBy::Factory;
        CHECK(holdPoints(profile, quickbuild, {ComponentKind::FuelTank}).empty());
        Closing inherited;
        inherited.made_by = MadeBy::EarlierBuilder;
        CHECK_FALSE(holdPoints(profile, inherited, {ComponentKind::FuelTank}).empty());
    }
}

TEST_CASE("The whole aircraft gets one final hold point")
{
    Closing aircraft;
    aircraft.scope = ClosingScope::Aircraft;
    aircraft.permanent = false;

    for (const std::string_view id : {"ca", "us", "gb", "plain"}) {
        const Profile profile = shipped(id);
        CHECK(holdPoints(profile, aircraft, {}) == Kinds{HoldPointKind::Final});
    }
}

TEST_CASE("An inspector's list is offered by kind of part and construction")
{
    const Profile profile = shipped("ca");
    const auto offered = [&](ComponentKind kind, std::optional<Construction> construction) {
        std::vector<std::string> keys;
        for (const Profile::Checklist &list : profile.checklists) {
            if (list.appliesTo(kind, construction))
                keys.push_back(list.key);
        }
        return keys;
    };
    using Keys = std::vector<std::string>;

    CHECK(offered(ComponentKind::ControlSurface, Construction::Metal) ==
          Keys{"common", "metal_control_surface"});
    CHECK(offered(ComponentKind::ControlSurface, Construction::Wood) == Keys{"common", "wood"});
    CHECK(offered(ComponentKind::ControlSurface, std::nullopt) == Keys{"common"});
    CHECK(offered(ComponentKind::LiftingSurface, Construction::Composite) ==
          Keys{"common", "wing", "composite"});
    CHECK(offered(ComponentKind::FuselageSection, Construction::Tube) ==
          Keys{"common", "fuselage_and_tail", "fabric"});
    CHECK(offered(ComponentKind::Part, std::nullopt) == Keys{"common"});
}

TEST_CASE("A citation says title, edition and place, and owns up when the source was not read")
{
    Profile profile;
    profile.sources = {{.id = "circular", .title = "Circular 7", .edition = "1998-09-08"},
                       {.id = "hearsay", .title = "Hangar talk"}};

    CHECK(profile.citation("circular", Mark::Read) == "Circular 7, 1998-09-08");
    CHECK(profile.citation("circular", Mark::SecondHand, "4-57") ==
          "Circular 7, 1998-09-08, 4-57 [second-hand]");
    CHECK(profile.citation("hearsay", Mark::Memory) == "Hangar talk [from memory]");
    CHECK(profile.citation("unlisted", Mark::Read) == "unlisted");

    const Tongue german{[](std::string_view pattern) -> std::string {
                            return pattern == "{0} [from memory]" ? "{0} [aus dem Gedächtnis]"
                                                                  : std::string(pattern);
                        },
                        {}};
    CHECK(said(citationMessage("Hangar talk [from memory]"), german) ==
          "Hangar talk [aus dem Gedächtnis]");
    for (const std::string cited :
         {"", "Circular 7", "Circular 7 [second-hand]", "Hangar talk [from memory]"})
        CHECK(english(citationMessage(cited)) == cited);
}
