// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/Violations.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

using Said = std::vector<std::string>;

} // namespace

TEST_CASE("A number that people say is unique, among withdrawn records too")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto first = project.squawk(wing, "2026-01-02");
    const auto second = project.squawk(wing, "2026-01-03");
    project.deviation(wing, "2026-01-02");
    project.bulletin(wing, "2026-01-02");
    CHECK(wrongs(project).empty());
    project.change(second, [](Squawk &s) { s.number = "1"; });
    project.withdraw(first);
    const Said same{
        "Squawk 1 “Overdriven rivet” has the number 1, which the one with id 3 already has."};
    CHECK(wrongs(project) == same);
    CHECK(wrongs(project, first) == same);
    CHECK(wrongs(project, second) == same);
    CHECK(wrongs(project, wing).empty());
}

TEST_CASE("A code is unique among live parts, and free again when its part is withdrawn")
{
    ProjectBuilder project;
    const auto left = project.part("Left rib");
    const auto right = project.part("Right rib");
    CHECK(wrongs(project).empty());
    for (const auto part : {left, right})
        project.change(part, [](Component &c) { c.code = "R1"; });
    CHECK(wrongs(project) ==
          Said{"Part R1 “Right rib” has the code R1, which the part with id 2 already has."});
    project.withdraw(left);
    CHECK(wrongs(project).empty());
}

TEST_CASE("Of three with one number each is told, whichever was touched")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto first = project.squawk(wing, "2026-01-02");
    const auto second = project.squawk(wing, "2026-01-03");
    const auto third = project.squawk(wing, "2026-01-04");
    const auto other = project.squawk(wing, "2026-01-05");
    for (const auto squawk : {first, second, third})
        project.change(squawk, [](Squawk &s) { s.number = "1"; });
    CHECK(wrongs(project).size() == 2);
    CHECK(wrongs(project, first).size() == 2);
    CHECK(wrongs(project, second).size() == 1);
    CHECK(wrongs(project, third).size() == 1);
    CHECK(wrongs(project, other).empty());
}

TEST_CASE("Of deviations and of bulletins, too, no two have one number")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    project.deviation(wing, "2026-01-02");
    const auto deviation = project.deviation(wing, "2026-01-03");
    project.bulletin(wing, "2026-01-02");
    const auto bulletin = project.bulletin(wing, "2026-01-03");
    CHECK(wrongs(project).empty());
    project.change(deviation, [](Deviation &d) { d.number = "1"; });
    CHECK(wrongs(project) ==
          Said{"Deviation 1 “Longer bolt” has the number 1, which the one with id 3 already has."});
    project.change(deviation, [](Deviation &d) { d.number = "2"; });
    project.change(bulletin, [](Bulletin &b) { b.number = "1"; });
    CHECK(wrongs(project, bulletin).size() == 1);
    CHECK(wrongs(project).size() == 1);
}
