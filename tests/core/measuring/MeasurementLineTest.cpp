// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measuring/MeasurementLine.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using measuring::readMeasurementLine;

TEST_CASE("A line says what is measured and between which limits, with either sign for decimals")
{
    const auto gap = readMeasurementLine("aileron gap, 1,5-8 mm");
    REQUIRE(gap);
    CHECK(gap->what == "aileron gap");
    CHECK(gap->minimum == 1.5);
    CHECK(gap->maximum == 8.0);
    CHECK(gap->unit == "mm");
    const auto wall = readMeasurementLine("Dicke, > 1,4 mm");
    REQUIRE(wall);
    CHECK(wall->what == "Dicke");
    CHECK(wall->minimum == 1.4);
    CHECK_FALSE(wall->maximum);
    const auto sender = readMeasurementLine("right sender, full, 28.5 to 36 ohm");
    REQUIRE(sender);
    CHECK(sender->what == "right sender, full");
    CHECK(sender->minimum == 28.5);
}

TEST_CASE("Limits may be written as what it is to be and how far off, or as a most and a least")
{
    for (const auto *line :
         {"travel, 20 ± 0,5 deg", "travel, 20±0.5 deg", "travel, 20 +/- 0.5 deg"}) {
        const auto travel = readMeasurementLine(line);
        REQUIRE(travel);
        CHECK(travel->what == "travel");
        CHECK(travel->minimum == 19.5);
        CHECK(travel->maximum == 20.5);
        CHECK(travel->unit == "deg");
    }
    const auto most = readMeasurementLine("gap, max 2 mm");
    CHECK(most->what == "gap");
    CHECK(most->maximum == 2.0);
    CHECK_FALSE(most->minimum);
    CHECK(readMeasurementLine("wall, min. 1,4 mm")->minimum == 1.4);
    const auto both = readMeasurementLine("wall, min 1.4 max 1.6 mm");
    CHECK(both->minimum == 1.4);
    CHECK(both->maximum == 1.6);
    CHECK(both->unit == "mm");
    CHECK(readMeasurementLine("travel, 20 ± much")->what == "travel, 20 ± much");
    CHECK(readMeasurementLine("gap, max play")->what == "gap, max play");
}

TEST_CASE("A line without limits is all name, and limits the wrong way round are told")
{
    const auto plain = readMeasurementLine("track of the main wheels, unloaded");
    REQUIRE(plain);
    CHECK(plain->what == "track of the main wheels, unloaded");
    const auto turned = readMeasurementLine("gap, 8-1,5 mm");
    REQUIRE_FALSE(turned);
    CHECK(english(turned.reason()) == "The lower limit 8 is above the upper limit 1.5.");
    CHECK_FALSE(readMeasurementLine("  "));
}
