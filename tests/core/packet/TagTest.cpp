// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/Tag.h"

#include "core/packet/InWords.h"
#include "core/readiness/Readiness.h"
#include "tests/support/WingProject.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using lastrivet::test::WingProject;

TEST_CASE("A tag names first what touches airworthiness, then what can be done now, and last what "
          "waits for a signature")
{
    WingProject project;
    project.records.steps.put(
        {.id = Id<Step>{2}, .component_id = project.rib, .title = "Fit the clip"});
    const readiness::Answer answer =
        readiness::readiness(project.records, project.profile, project.as_of);
    const auto tags = packet::tags(project.records, answer, {project.wingSkin});
    REQUIRE(tags.size() == 1);
    REQUIRE(tags[0].waits_for.size() > 2);
    CHECK(tags[0].of_airworthiness == 1);
    CHECK(english(tags[0].waits_for[0]).find("Rivet set too deep in rib 3") != std::string::npos);
    CHECK(english(tags[0].waits_for[1]) == "Fit the clip in LW-R3: not done");
    CHECK(english(tags[0].waits_for.back()).find("is not signed") != std::string::npos);
    CHECK(packet::tags(project.records, answer, {project.tailSkin}).empty());
}

TEST_CASE(
    "Squawks of airworthiness stand first on a tag among however many steps that are not done")
{
    WingProject project;
    for (std::int64_t id = 2; id < 12; ++id)
        project.records.steps.put(
            {.id = Id<Step>{id}, .component_id = project.rib, .title = "Fit a clip"});
    project.records.squawks.put({.id = Id<Squawk>{9},
                                 .number = "9",
                                 .component_id = project.rib,
                                 .title = "Crack beside rib 3",
                                 .severity = Severity::Airworthiness,
                                 .found_on = WingProject::at("2026-03-13")});
    const readiness::Answer answer =
        readiness::readiness(project.records, project.profile, project.as_of);
    const auto tags = packet::tags(project.records, answer, {project.wingSkin});
    REQUIRE(tags.size() == 1);
    CHECK(tags[0].of_airworthiness == 2);
    const std::string first = english(tags[0].waits_for[0]) + '\n' + english(tags[0].waits_for[1]);
    CHECK(first.find("Crack beside rib 3") != std::string::npos);
    CHECK(first.find("Rivet set too deep in rib 3") != std::string::npos);
}

TEST_CASE("A path through parts that are damaged into a ring ends")
{
    WingProject project;
    Component wing = *project.records.components.find(project.wing);
    wing.parent_id = project.rib;
    project.records.components.put(wing);
    CHECK(packet::partPath(project.records, project.rib).ends_with("Rib 3"));
}
