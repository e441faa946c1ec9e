// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/FrontPages.h"

#include "core/packet/Packet.h"
#include "core/readiness/Readiness.h"
#include "tests/support/WingProject.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string_view>

using namespace lastrivet;
using lastrivet::packet::Packet;
using lastrivet::test::WingProject;

TEST_CASE("A closing without any work is not begun, whatever its rules say")
{
    WingProject project;
    project.records.components.put({.id = Id<Component>{9}, .code = "F", .name = "Flap"});
    project.records.closings.put({.id = Id<Closing>{9},
                                  .component_id = Id<Component>{9},
                                  .title = "Flap skin",
                                  .encloses = {Id<Component>{9}}});
    const Id<Closing> tip{10};
    project.records.components.put({.id = Id<Component>{10}, .code = "TIP", .name = "Tip"});
    project.records.closings.put({.id = tip,
                                  .component_id = Id<Component>{10},
                                  .title = "Tip skin",
                                  .encloses = {Id<Component>{10}},
                                  .events = {{.closed_on = Moment::parse("2025-06-01")}}});
    const Packet flap = packetOf(project, {Id<Closing>{9}});
    CHECK_FALSE(flap.begun);
    CHECK_FALSE(flap.standings[0].begun);
    CHECK_FALSE(flap.front.to_close[0].begun);
    CHECK(english(packet::inWords(flap.state, flap.begun)) == "not begun");
    // What was begun and calls for something comes before it, what is closed behind it.
    const Packet withWing = packetOf(project, {project.wingSkin, Id<Closing>{9}});
    CHECK(withWing.begun);
    CHECK(withWing.state == readiness::State::Hold);
    const Packet withTip = packetOf(project, {Id<Closing>{9}, tip});
    const readiness::Answer answer =
        readiness::readiness(project.records, project.profile, project.as_of);
    CHECK(answer.closing(tip)->state == readiness::State::Closed);
    CHECK_FALSE(withTip.begun);
}

TEST_CASE("On paper the builder's signature is not the reader's")
{
    CHECK(english(packet::inWords(readiness::State::ReadyToSign, true)) ==
          "stays open, waits for the builder's signature");
    CHECK(english(packet::inWords(readiness::State::Clear, true)) ==
          "nothing on record against closing");
}

TEST_CASE("What is grave stands before what is merely open")
{
    WingProject project;
    for (std::int64_t id = 40; id < 60; ++id)
        project.records.steps.put({.id = Id<Step>{id},
                                   .component_id = project.rib,
                                   .title = "Step " + std::to_string(id)});
    project.records.squawks.put({.id = Id<Squawk>{41},
                                 .number = "41",
                                 .component_id = project.rib,
                                 .title = "Crack in the flange",
                                 .severity = Severity::Airworthiness,
                                 .found_on = WingProject::at("2026-03-01")});
    project.records.deviations.put({.id = Id<Deviation>{7},
                                    .number = "7",
                                    .component_ids = {project.rib},
                                    .title = "Rivets of steel",
                                    .raised_on = WingProject::at("2026-01-05"),
                                    .decided_on = WingProject::at("2026-01-20"),
                                    .decided_by = project.inspector,
                                    .decision = Decision::Rejected,
                                    .built_on = WingProject::at("2026-01-10")});
    const Packet packet = wingPacket(project);
    const auto &open = packet.front.open;
    REQUIRE(open.size() > 22);
    CHECK(std::count_if(open.begin(), open.end(), [](const auto &row) { return row.is_grave; }) ==
          2);
    CHECK(open[0].is_grave);
    CHECK(open[1].is_grave);
    const auto isNamed = [&](const std::string &title) {
        return english(open[0].what).find(title) != std::string::npos ||
               english(open[1].what).find(title) != std::string::npos;
    };
    CHECK(isNamed("Crack in the flange"));
    CHECK(isNamed("Rivets of steel"));
}

TEST_CASE("What is found behind a closing that is closed stands on its front pages, gravest first")
{
    WingProject project;
    project.records.squawks.put({.id = Id<Squawk>{30},
                                 .number = "30",
                                 .component_id = project.tank,
                                 .title = "Drain of the tank blocked",
                                 .severity = Severity::Airworthiness,
                                 .found_on = WingProject::at("2026-03-01")});
    const Packet packet = packetOf(project, {project.tankBaffle});
    const auto &open = packet.front.out_of_reach;
    REQUIRE(open.size() >= 2);
    CHECK(open[0].is_grave);
    CHECK(english(open[0].what) == "Squawk 30, Drain of the tank blocked in LW-T: open");
    CHECK(open[0].closings == "Last baffle of the left tank");
    CHECK_FALSE(open[1].is_grave);
    CHECK(std::any_of(open.begin(), open.end(), [](const auto &row) {
        return english(row.what).find("Bell crank") != std::string::npos;
    }));
    // Each says what is open about it, not its name alone.
    CHECK(std::all_of(open.begin(), open.end(), [](const auto &row) {
        return english(row.what).find(": ") != std::string::npos;
    }));
    CHECK(wingPacket(project).front.out_of_reach.empty());
}

TEST_CASE("What is open out of reach is told in the words of its rule")
{
    WingProject project;
    project.records.squawks.put({.id = Id<Squawk>{30},
                                 .number = "30",
                                 .component_id = project.tank,
                                 .title = "Drain of the tank blocked",
                                 .found_on = WingProject::at("2026-03-01"),
                                 .correction = "Drilled through",
                                 .fixed_on = WingProject::at("2026-03-02"),
                                 .fixed_by = project.builder});
    project.records.fasteners.put({.id = Id<Fastener>{30},
                                   .component_id = project.tank,
                                   .place = "Filler",
                                   .torque_min = 5,
                                   .fitted_on = WingProject::at("2026-01-08")});
    const Packet packet = packetOf(project, {project.tankBaffle});
    const auto isTold = [&](std::string_view words) {
        return std::any_of(packet.front.out_of_reach.begin(), packet.front.out_of_reach.end(),
                           [&](const auto &row) { return english(row.what) == words; });
    };
    CHECK(isTold("Squawk 30, Drain of the tank blocked in LW-T: fixed, not verified"));
    CHECK(isTold("Fastener at Filler in LW-T: finger-tight, fitted but not torqued"));
    CHECK(isTold("Leak test, pressure kept in LW-T: the last measurement is 18 kPa, outside its "
                 "limits (at least 20 kPa)"));
}
