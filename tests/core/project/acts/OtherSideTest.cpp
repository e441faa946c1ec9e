// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/OtherSide.h"

#include <catch2/catch.hpp>

namespace lastrivet::acts {

TEST_CASE("Left and right change places in names, word by word")
{
    CHECK(nameOnOtherSide("Left wing") == "Right wing");
    CHECK(nameOnOtherSide("left_wing") == "right_wing");
    CHECK(nameOnOtherSide("LEFT FLAP, right-hand end") == "RIGHT FLAP, left-hand end");
    CHECK(nameOnOtherSide("Aileron LH") == "Aileron RH");
    CHECK(nameOnOtherSide("Linker Flügel") == "Rechter Flügel");
    CHECK(nameOnOtherSide("Longeron gauche") == "Longeron droite");
    // No word for a side, though letters of one are in it.
    CHECK(nameOnOtherSide("Leftover rivets") == "Leftover rivets");
    CHECK(nameOnOtherSide("Bright strip") == "Bright strip");
    CHECK(nameOnOtherSide("Rib 3") == "Rib 3");
}

TEST_CASE("The letter of a side changes in a code, other letters stay")
{
    CHECK(codeOnOtherSide("LW-R3", Side::Left) == "RW-R3");
    CHECK(codeOnOtherSide("RW-L1", Side::Right) == "LW-L1");
    CHECK(codeOnOtherSide("L-12", Side::Left) == "R-12");
    CHECK(codeOnOtherSide("L12", Side::Left) == "R12");
    CHECK(codeOnOtherSide("W-L-R3", Side::Left) == "W-R-R3");
    CHECK(codeOnOtherSide("FLAP.LH", Side::Left) == "FLAP.RH");
    CHECK(codeOnOtherSide("12-L", Side::Left) == "12-R");
    CHECK(codeOnOtherSide("LONG-4", Side::Left) == "LONG-4");
    CHECK(codeOnOtherSide("", Side::Left).empty());
}

TEST_CASE("The first word for a side says which side a part is on")
{
    CHECK(sideNamed("Left wing") == Side::Left);
    CHECK(sideNamed("Aileron, right") == Side::Right);
    CHECK_FALSE(sideNamed("Rudder").has_value());
}

} // namespace lastrivet::acts
