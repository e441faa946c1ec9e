// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/IfReopened.h"

#include "tests/support/WingProject.h"

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::readiness {

namespace {

using test::WingProject;

/// The wing's skin, signed for, with the tank's baffle closed inside it.
struct Signed : WingProject {
    Signed()
    {
        for (const auto day : {"2026-03-01", "2026-03-12"})
            records.sign_offs.put({.id = Id<SignOff>{std::string_view(day) == "2026-03-01" ? 1 : 2},
                                   .hold_point_id = preCover,
                                   .person_id = inspector,
                                   .signed_on = at(day)});
    }

    IfReopened opened(Id<Closing> closing, std::string_view on) const
    {
        return ifReopened(records, profile, closing, at(on), as_of);
    }
};

} // namespace

TEST_CASE("Opening a box inside takes the signature of the one around it")
{
    const Signed project;
    const auto effect = project.opened(project.tankBaffle, "2026-03-13");
    REQUIRE(effect.signatures.size() == 1);
    CHECK(effect.signatures[0].hold_point == project.preCover);
    // The latest of the two is the one that counts until then.
    CHECK(effect.signatures[0].sign_off == Id<SignOff>{2});
    REQUIRE_FALSE(effect.changes.empty());
    const auto own = std::find_if(
        effect.changes.begin(), effect.changes.end(),
        [&](const IfReopened::Change &change) { return change.closing == project.tankBaffle; });
    REQUIRE(own != effect.changes.end());
    CHECK(own->before == State::ClosedEarly);
    CHECK(own->after == State::Hold);
}

TEST_CASE("A signature given after the opening is not lost")
{
    const Signed project;
    CHECK(project.opened(project.tankBaffle, "2026-03-11").signatures.empty());
}

TEST_CASE("Opening something elsewhere leaves signatures alone and makes its open things reachable")
{
    const Signed project;
    const auto effect = project.opened(project.tailSkin, "2026-03-13");
    CHECK(effect.signatures.empty());
    const RecordRef scratch{RecordType::Squawk, 3};
    CHECK(std::find(effect.reachable.begin(), effect.reachable.end(), scratch) !=
          effect.reachable.end());
}

TEST_CASE("A signature that is outdated already is not lost by an opening")
{
    Signed project;
    project.records.work_sessions.put({.id = Id<WorkSession>{90},
                                       .began = WingProject::at("2026-03-13"),
                                       .component_id = project.rib});
    CHECK(project.opened(project.tankBaffle, "2026-03-14").signatures.empty());
}

TEST_CASE("A closed box counts as signed, whatever outdated its signature at the closing")
{
    Signed project;
    project.records.work_sessions.put({.id = Id<WorkSession>{90},
                                       .began = WingProject::at("2026-03-13"),
                                       .component_id = project.rib});
    Closing skin = *project.records.find(project.wingSkin);
    skin.events = {{WingProject::at("2026-03-13"), {}, {}, "Skin on", false}};
    project.records.closings.put(skin);
    const auto effect = project.opened(project.wingSkin, "2026-03-14");
    REQUIRE(effect.signatures.size() == 1);
    CHECK(effect.signatures[0].hold_point == project.preCover);
}

} // namespace lastrivet::readiness
