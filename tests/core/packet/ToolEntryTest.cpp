// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/ToolEntry.h"

#include "core/packet/Packet.h"
#include "tests/support/WingProject.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using lastrivet::packet::Packet;
using lastrivet::test::WingProject;

TEST_CASE("A measurement tells of a tool out of calibration, and the tool how often it was")
{
    WingProject project;
    Measurement leak = *project.records.find(Id<Measurement>{1});
    leak.tool_id = Id<Tool>{1};
    project.records.measurements.put(leak);
    const Packet good = wingPacket(project);
    REQUIRE(good.measurements.size() == 1);
    REQUIRE(good.tools.size() == 1);
    CHECK_FALSE(good.measurements[0].was_tool_uncalibrated);
    CHECK(good.tools[0].uses == 2);
    CHECK(good.tools[0].uncalibrated_uses == 0);

    // Still good for the bolt of 21 February, not for the leak test four days later.
    Tool wrench = *project.records.find(Id<Tool>{1});
    wrench.calibrations[0].due_on = WingProject::at("2026-02-24");
    project.records.tools.put(wrench);
    const Packet late = wingPacket(project);
    CHECK_FALSE(late.fasteners.at(0).was_tool_uncalibrated);
    CHECK(late.measurements.at(0).was_tool_uncalibrated);
    CHECK(late.tools.at(0).uses == 2);
    CHECK(late.tools.at(0).uncalibrated_uses == 1);
}
