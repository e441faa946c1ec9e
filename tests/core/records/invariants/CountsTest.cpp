// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/Violations.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

using Said = std::vector<std::string>;

} // namespace

TEST_CASE("What is counted or estimated may be nothing, and is not below zero")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto step = project.step(wing, "Drill");
    const auto squawk = project.squawk(wing, "2026-01-02");
    const auto use = project.materialUse(wing, project.lot("Resin"), "2026-01-02");
    const auto photo = project.add(Media{.file = "photos/a.jpg"});
    const auto flight = project.add(Flight{.flown_on = on("2027-01-01"), .minutes = Minutes{1}});
    const auto giveAll = [&](std::int64_t number) {
        project.change(step, [=](Step &s) { s.estimate_minutes = Minutes{number}; });
        project.change(squawk, [=](Squawk &s) { s.estimate_minutes = Minutes{number}; });
        project.change(use, [=](MaterialUse &u) { u.cure_minutes = Minutes{number}; });
        project.change(photo, [=](Media &m) { m.bytes = number; });
        project.change(flight, [=](Flight &f) { f.landings = number; });
    };
    giveAll(0);
    CHECK(wrongs(project).empty());
    giveAll(-1);
    CHECK(wrongs(project, step) ==
          Said{"Step 3 “Drill” has estimate_minutes -1, which is below zero."});
    CHECK(wrongs(project, squawk).size() == 1);
    CHECK(wrongs(project, use).size() == 1);
    CHECK(wrongs(project, photo).size() == 1);
    CHECK(wrongs(project, flight).size() == 1);
    CHECK(wrongs(project).size() == 5);
    project.withdraw(step);
    CHECK(wrongs(project).size() == 4);
}

TEST_CASE("What a packing line counts is not below zero")
{
    ProjectBuilder project;
    const auto line = project.partLine(project.part("Wing"), "Bolt", 4);
    CHECK(wrongs(project).empty());
    project.change(line, [](PartLine &l) {
        l.quantity = -4;
        l.unit_price = -1;
    });
    CHECK(wrongs(project).size() == 2);
    project.change(line, [](PartLine &l) {
        l.received_quantity = -1;
        l.damaged_quantity = -1;
    });
    CHECK(wrongs(project).size() == 4);
}
