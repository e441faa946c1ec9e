// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/FailingDisk.h"
#include "tests/faults/FullDisk.h"
#include "tests/faults/Kills.h"
#include "tests/faults/PacketActs.h"

#include <catch2/catch.hpp>

using namespace lastrivet::faults;

TEST_CASE("Whichever operation of the disk fails, a packet is written whole or not at all",
          "[failure]")
{
    for (const auto &each : packetActs())
        DYNAMIC_SECTION(each.name)
        {
            failEachOperation(each);
        }
}

TEST_CASE("A packet that finds no room is refused, and made when there is room", "[full]")
{
    limitFiles(packetActs());
    fillSmallDisk(packetActs());
}

TEST_CASE("A program that is killed while it makes a packet leaves the records whole", "[kill]")
{
    killOften(printedPacket(), 40);
}
