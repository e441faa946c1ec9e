// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/Violations.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

using Said = std::vector<std::string>;

} // namespace

TEST_CASE("Required fields are filled, in rows of lists too")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto squawk = project.squawk(wing, "2026-01-02");
    const auto helper = project.person("Bo", {Role::Helper});
    CHECK(wrongs(project).empty());
    project.change(wing, [](Component &c) { c.name.clear(); });
    project.change(squawk, [](Squawk &s) {
        s.found_on.reset();
        s.repair_options.push_back({});
    });
    project.change(helper, [](Person &p) { p.roles.clear(); });
    CHECK(wrongs(project, wing) == Said{"Part 2 lacks name."});
    CHECK(wrongs(project, squawk) ==
          Said{"Squawk 1 “Overdriven rivet” lacks title in row 1 of repair_options.",
               "Squawk 1 “Overdriven rivet” lacks found_on."});
    CHECK(wrongs(project, helper) == Said{"Person 4 “Bo” lacks roles."});
    CHECK(wrongs(project).size() == 4);
}

TEST_CASE("A text that has a default is never empty")
{
    ProjectBuilder project;
    project.records.project.name = "Demo";
    project.records.project.time_zone.clear();
    CHECK(wrongs(project) == Said{"Project “Demo” lacks time_zone."});
}

TEST_CASE("Ids run from 1 to the largest that every reader keeps exact")
{
    ProjectBuilder project;
    project.add(Component{.id = Id<Component>{largestId}, .name = "Last"});
    CHECK(wrongs(project).empty());
    project.add(Component{.id = Id<Component>{largestId + 1}, .name = "Beyond"});
    CHECK(wrongs(project) ==
          Said{"Part 9007199254740992 “Beyond” has an id that is not between 1 and "
               "9007199254740991."});
}

TEST_CASE("Whole numbers are no larger than every reader keeps exact, in rows of lists too")
{
    ProjectBuilder project;
    const auto step = project.step(project.part("Wing"), "Drill");
    project.change(step, [](Step &s) { s.estimate_minutes = Minutes{largestId}; });
    CHECK(wrongs(project).empty());
    project.change(step, [](Step &s) { s.estimate_minutes = Minutes{largestId + 1}; });
    CHECK(wrongs(project) ==
          Said{"Step 3 “Drill” has a number for estimate_minutes that is too large."});
    project.change(step, [](Step &s) { s.estimate_minutes = Minutes{-largestId - 1}; });
    CHECK(wrongs(project).size() == 1);
}
