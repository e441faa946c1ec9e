// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/Violations.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

using Said = std::vector<std::string>;

} // namespace

TEST_CASE("Parts form a forest")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto rib = project.part("Rib", wing);
    const auto hole = project.part("Hole", rib);
    project.part("Fuselage");
    CHECK(wrongs(project).empty());

    project.change(wing, [&](Component &c) { c.parent_id = hole; });
    const Said cycle{"Part 2 “Wing” lies inside part 4 “Hole”, which lies inside it in turn."};
    CHECK(wrongs(project) == cycle);
    CHECK(wrongs(project, wing) == cycle);
    CHECK(wrongs(project, rib) == cycle);

    project.change(wing, [&](Component &c) { c.parent_id = wing; });
    CHECK(wrongs(project, hole) == Said{"Part 2 “Wing” lies inside itself."});
}

TEST_CASE("A cycle above a part is reported once, and does not stop the other questions")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto rib = project.part("Rib", wing);
    const auto hole = project.part("Hole", rib);
    project.closing(hole);
    project.change(wing, [&](Component &c) { c.parent_id = rib; });
    CHECK(wrongs(project, hole).size() == 1);
    CHECK(wrongs(project).size() == 1);
}
