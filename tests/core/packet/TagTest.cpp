// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/Tag.h"

#include "core/packet/InWords.h"
#include "core/readiness/Readiness.h"
#include "tests/support/WingProject.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using lastrivet::test::WingProject;

TEST_CASE("A tag names first what can be done now, and last what waits for a signature")
{
    WingProject project;
    project.records.steps.put(
        {.id = Id<Step>{2}, .component_id = project.rib, .title = "Fit the clip"});
    const readiness::Answer answer =
        readiness::readiness(project.records, project.profile, project.as_of);
    const auto tags = packet::tags(project.records, answer, {project.wingSkin});
    REQUIRE(tags.size() == 1);
    REQUIRE(tags[0].waits_for.size() > 2);
    CHECK(english(tags[0].waits_for.front()) == "Fit the clip in LW-R3: not done");
    CHECK(english(tags[0].waits_for.back()).find("is not signed") != std::string::npos);
    CHECK(packet::tags(project.records, answer, {project.tailSkin}).empty());
}

TEST_CASE("A path through parts that are damaged into a ring ends")
{
    WingProject project;
    Component wing = *project.records.components.find(project.wing);
    wing.parent_id = project.rib;
    project.records.components.put(wing);
    CHECK(packet::partPath(project.records, project.rib).ends_with("Rib 3"));
}
