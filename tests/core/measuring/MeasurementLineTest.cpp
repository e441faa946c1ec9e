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

TEST_CASE("A most and a least may be parted by a comma, and their unit may be said twice")
{
    for (const auto *line :
         {"wall, min 1.4, max 1.6 mm", "wall, max 1.6 mm, min 1.4 mm", "wall, Min 1.4 mm, Max 1.6",
          "wall, min 1.4 mm max 1.6 mm", "wall, 1.4 mm to 1.6 mm", "wall, >= 1.4 <= 1.6 mm",
          "wall, mindestens 1,4, höchstens 1,6 mm", "wall, au moins 1,4 mm, au plus 1,6 mm",
          "wall, 1.4 mm − 1.6 mm", "wall, 1.5 mm ± 0.1 mm", "wall, 1.5 +0.1/-0.1 mm"}) {
        INFO(line);
        const auto wall = readMeasurementLine(line);
        REQUIRE(wall);
        CHECK(wall->what == "wall");
        CHECK(wall->minimum == 1.4);
        CHECK(wall->maximum == 1.6);
        CHECK(wall->unit == "mm");
    }
    CHECK(readMeasurementLine("wall, max 5, max 6 mm")->what == "wall, max 5");
    CHECK(readMeasurementLine("travel, −2 to 2 mm")->minimum == -2.0);
    CHECK(english(readMeasurementLine("wall, min 1.4 cm, max 16 mm").reason()) ==
          "The limits are in cm and in mm; write both in one unit.");
    CHECK(english(readMeasurementLine("wall, min 1.4 cm max 16 mm").reason()) ==
          "“min 1.4 cm max 16 mm” was not understood: write limits as 1.4-1.6 mm, max 1.6 mm or "
          "20 ± 0.5 mm.");
}

TEST_CASE("Limits around a value are the decimals that paper has, and no binary fractions")
{
    CHECK(readMeasurementLine("wall, 1.4 ± 0.1")->minimum == 1.3);
    CHECK(readMeasurementLine("wall, 1.4 ± 0.1")->maximum == 1.5);
    CHECK(readMeasurementLine("wall, 0.3 ± 0.1")->minimum == 0.2);
    CHECK(readMeasurementLine("span, 2743.2 +0.3/-0.1 mm")->minimum == 2743.1);
    CHECK(readMeasurementLine("span, 2743.2 +0.3/-0.1 mm")->maximum == 2743.5);
    CHECK(readMeasurementLine("span, 2743.2 +0.3 / -0 mm")->minimum == 2743.2);
}

TEST_CASE("A comma that may part thousands is decimals where the person writes them so, or told")
{
    const auto read = readMeasurementLine("Wand, 1,250-1,400 mm", DecimalSign::Comma);
    REQUIRE(read);
    CHECK(read->minimum == 1.25);
    CHECK(read->maximum == 1.4);
    for (const auto sign : {DecimalSign::Unknown, DecimalSign::Point})
        CHECK(english(readMeasurementLine("wall, > 1,850 mm", sign).reason()) ==
              "“> 1,850 mm” was not understood: write limits as 1.4-1.6 mm, max 1.6 mm or 20 ± "
              "0.5 mm.");
    CHECK(readMeasurementLine("overhaul, 1,850 hours")->what == "overhaul, 1,850 hours");
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
