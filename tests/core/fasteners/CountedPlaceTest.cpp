// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fasteners/CountedPlace.h"

#include "core/fasteners/FastenerLine.h"

#include <catch2/catch.hpp>

#include <string>

using namespace lastrivet;
using namespace lastrivet::fasteners;

namespace {

std::string counted(std::string_view words)
{
    Fastener fastener;
    if (const auto wrong = takePlace(fastener, words))
        return english(*wrong);
    return std::to_string(fastener.quantity) + "|" + fastener.place;
}

} // namespace

TEST_CASE("A count stands behind a number, and so does more than one fastener, in three languages")
{
    CHECK(counted("12 x rear spar hinge") == "12|rear spar hinge");
    CHECK(counted("12x bolts") == "12|bolts");
    CHECK(counted("12 × Scharnier") == "12|Scharnier");
    CHECK(counted("12 pcs bolts") == "12|bolts");
    CHECK(counted("12 PCS. bolts") == "12|bolts");
    CHECK(counted("6 ea hinge") == "6|hinge");
    CHECK(counted("12 Stk. Schrauben") == "12|Schrauben");
    CHECK(counted("12Stk Schrauben") == "12|Schrauben");
    CHECK(counted("6 Stück Scharnier") == "6|Scharnier");
    CHECK(counted("6 pièces charnière") == "6|charnière");
    CHECK(counted("12 Schlossschrauben") == "12|Schlossschrauben");
    CHECK(counted("12 Schrauben am Holm") == "12|Schrauben am Holm");
    CHECK(counted("4 bolts of the seat") == "4|bolts of the seat");
    CHECK(counted("8 locknuts") == "8|locknuts");
    CHECK(counted("12 boulons") == "12|boulons");
    CHECK(counted("12 vis de capot") == "12|vis de capot");
    CHECK(counted("4 écrous") == "4|écrous");
    CHECK(counted("1 x 4 hinges") == "1|4 hinges");
    CHECK(counted("1 000 bolts") == "1000|bolts");
    CHECK(counted("1.000 Schrauben") == "1000|Schrauben");
    CHECK(counted("1\u202f200 x rivets") == "1200|rivets");
    CHECK(readFastenerLine("12 Schlossschrauben, AN4-7A, 1/4-28")->quantity == 12);
}

TEST_CASE("A number that may be a count or part of the place is asked about")
{
    CHECK(counted("4 hinges") ==
          "“4 hinges” may be 4 fasteners or one: write 4 x hinges, or 1 x 4 hinges.");
    CHECK(counted("12 hex bolts") ==
          "“12 hex bolts” may be 12 fasteners or one: write 12 x hex bolts, or 1 x 12 hex bolts.");
    for (const std::string words :
         {"hinge", "1 hinge", "3 o'clock mount bolt", "9 Uhr oben", "6 mm pin", "12 V relay",
          "2nd rib", "2. Rippe", "1/4 bolts", "3-bolt flange", "12", "rib 3 bolts"})
        CHECK(counted(words) == "1|" + words);
}

TEST_CASE("A count behind the place is asked about, and what is a size there is none")
{
    CHECK(counted("hinge x 4") ==
          "“hinge x 4” may be 4 fasteners or one: write 4 x hinge, or 1 x hinge x 4.");
    for (const std::string words :
         {"hinge x4", "hinge 4x", "hinge 4 pcs", "hinge 4 Stk.", "hinge × 4", "hinge 4 off"}) {
        INFO(words);
        CHECK(counted(words) ==
              "“" + words + "” may be 4 fasteners or one: write 4 x hinge, or 1 x " + words + ".");
    }
    CHECK(counted("1 x hinge x 4") == "1|hinge x 4");
    CHECK(counted("1 000 hinges") ==
          "“1 000 hinges” may be 1000 fasteners or one: write 1000 x hinges, or 1 x 1 000 hinges.");
    for (const std::string words :
         {"hinge M6 x 20", "rib 12", "hinge x 1", "x 4", "box rib", "rib 3-4", "2 115 V bus bar"})
        CHECK(counted(words) == "1|" + words);
}

TEST_CASE("A count needs one or more, and something that is counted")
{
    CHECK(counted("0 x hinge") == "A line is for one fastener or more.");
    CHECK(counted("0 bolts") == "A line is for one fastener or more.");
    CHECK(counted("-3 x hinge") == "A line is for one fastener or more.");
    CHECK(counted("6 ea") == "Say where the fastener is.");
    CHECK(counted("12 x") == "Say where the fastener is.");
}
