// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/Violations.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

using Said = std::vector<std::string>;

} // namespace

TEST_CASE("A record may name live records only")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto squawk = project.squawk(wing, "2026-01-02");
    CHECK(wrongs(project).empty());

    project.change(squawk, [](Squawk &s) { s.component_id = Id<Component>{99}; });
    const Said notThere{
        "Squawk 1 “Overdriven rivet” names part 99 in component_id, which is not on record."};
    CHECK(wrongs(project) == notThere);
    CHECK(wrongs(project, squawk) == notThere);

    project.change(squawk, [&](Squawk &s) { s.component_id = wing; });
    project.withdraw(wing);
    const Said withdrawn{
        "Squawk 1 “Overdriven rivet” names part 2 “Wing” in component_id, which is withdrawn."};
    CHECK(wrongs(project) == withdrawn);
    CHECK(wrongs(project, squawk) == withdrawn);
    CHECK(wrongs(project, wing) == withdrawn);
}

TEST_CASE("A withdrawn record may name withdrawn ones, but none that is gone")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto squawk = project.squawk(wing, "2026-01-02");
    project.withdraw(squawk);
    project.withdraw(wing);
    CHECK(wrongs(project).empty());
    CHECK(wrongs(project, wing).empty());

    project.records.components.erase(wing.value());
    CHECK(
        wrongs(project, wing) ==
        Said{"Squawk 1 “Overdriven rivet” names part 2 in component_id, which is not on record."});
    CHECK(wrongs(project, wing) == wrongs(project));
}

TEST_CASE("Ids in sets and in rows of lists are followed")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto lot = project.lot("Sealant");
    const auto use = project.materialUse(wing, lot, "2026-01-02");
    const auto session = project.session(wing, "2026-01-02T10:00", 60);
    project.change(use, [](MaterialUse &u) { u.lot_ids.push_back(Id<MaterialLot>{98}); });
    project.change(session, [](WorkSession &s) { s.workers.push_back({Id<Person>{99}}); });
    CHECK(
        wrongs(project) ==
        Said{"Log entry 5 of 2026-01-02T10:00 names person 99 in workers, which is not on record.",
             "Material use 4 of 2026-01-02 names material lot 98 in lot_ids, which is not on "
             "record."});
}

TEST_CASE(
    "Links of files, hold points of inspections and earlier steps may be withdrawn, not missing")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto first = project.step(wing, "Drill");
    const auto last = project.step(wing, "Rivet", {first});
    const auto closing = project.closing(wing);
    const auto point = project.holdPoint(closing, HoldPointKind::PreCover, SignerRole::Inspector);
    const auto visit = project.add(Inspection{.hold_point_ids = {point}});
    const auto photo = project.photo("2026-01-02", {{RecordType::Step, first.value()}});
    CHECK(wrongs(project).empty());
    project.withdraw(first);
    project.withdraw(point);
    CHECK(wrongs(project).empty());
    CHECK(wrongs(project, first).empty());
    CHECK(wrongs(project, point).empty());

    project.records.steps.erase(first.value());
    project.records.hold_points.erase(point.value());
    CHECK(wrongs(project, last).size() == 1);
    CHECK(wrongs(project, visit).size() == 1);
    CHECK(wrongs(project, photo).size() == 1);
    CHECK(wrongs(project).size() == 3);
}

TEST_CASE("A file may be linked to the project itself")
{
    ProjectBuilder project;
    project.photo("2026-01-02", {{RecordType::Project, 1}});
    CHECK(wrongs(project).empty());
}

TEST_CASE("The project's builder is a live person")
{
    ProjectBuilder project;
    project.records.project.builder_id = Id<Person>{50};
    CHECK(wrongs(project) ==
          Said{"Project “Two-seater” names person 50 in builder_id, which is not on record."});
    CHECK(wrongs(project, RecordRef{RecordType::Project, 1}) == wrongs(project));
}
