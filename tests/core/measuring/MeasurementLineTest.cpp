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

TEST_CASE("A semicolon parts the limits from the name as a comma does")
{
    for (const auto *line : {"play; 0.4-0.6 mm", "play ; min 0.4 mm; max 0.6 mm",
                             "play; min 0.4, max 0.6 mm", "play, min 0.4; max 0.6 mm"}) {
        INFO(line);
        const auto play = readMeasurementLine(line);
        REQUIRE(play);
        CHECK(play->what == "play");
        CHECK(play->minimum == 0.4);
        CHECK(play->maximum == 0.6);
        CHECK(play->unit == "mm");
    }
    CHECK(readMeasurementLine("flap, left; max 3 mm")->what == "flap, left");
    CHECK(english(readMeasurementLine("; max 3 mm").reason()) == "Say what is measured.");
}

TEST_CASE("Limits are read in the words of all three languages, and what begins like one is told")
{
    for (const auto *line :
         {"jeu, de 0,4 à 0,6 mm", "jeu, entre 0,4 et 0,6 mm", "Spiel, zwischen 0,4 und 0,6 mm",
          "Spiel, von 0,4 bis 0,6 mm", "play, between .4 and .6 mm", "play, Between 0.4 and 0.6 mm",
          "play, from .4 mm to .6 mm", "jeu, mini 0,4, maxi 0,6 mm", "jeu, mini. 0,4 maxi. 0,6 mm",
          "Spiel, mind. 0,4, höchstens 0,6 mm", "Spiel, minimal 0,4 maximal 0,6 mm",
          "play, no less than .4, no more than .6 mm", "jeu, pas moins de 0,4, pas plus de 0,6 mm",
          "play, min: .4, max : .6 mm", "play, .4-.6 mm"}) {
        INFO(line);
        const auto play = readMeasurementLine(line);
        REQUIRE(play);
        CHECK((play->what == "jeu" || play->what == "Spiel" || play->what == "play"));
        CHECK(play->minimum == 0.4);
        CHECK(play->maximum == 0.6);
        CHECK(play->unit == "mm");
    }
    CHECK(readMeasurementLine("jeu, maxi 0,5")->maximum == 0.5);
    CHECK(readMeasurementLine("Spiel, bis zu 0,5 mm")->maximum == 0.5);
    for (const auto *line : {"jeu, maxi.0,5 mm", "play, max.5 mm", "play, between 3 mm and more",
                             "jeu, entre 0,4 a 0,6 mm"}) {
        INFO(line);
        REQUIRE_FALSE(readMeasurementLine(line));
        CHECK(english(readMeasurementLine(line).reason()).find("was not understood") !=
              std::string::npos);
    }
    for (const auto *line : {"flap, between ribs 3 and 4", "porte, entre nervures 3 et 4",
                             "clock, minute hand 3", "door, maximum play"})
        CHECK(readMeasurementLine(line)->what == line);
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
