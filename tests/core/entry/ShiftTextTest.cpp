// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/ShiftText.h"

#include <catch2/catch.hpp>

namespace lastrivet::entry {

TEST_CASE("A clock is set right by hours and minutes, with a sign or none")
{
    CHECK(readShift("1h30") == 90);
    CHECK(readShift("+1h30") == 90);
    CHECK(readShift(" - 6 h ") == -360);
    CHECK(readShift("−90 min") == -90);
    CHECK(readShift("1:15") == 75);
}

TEST_CASE("A clock whose day was wrong is set right by days")
{
    CHECK(readShift("2d") == 2 * 24 * 60);
    CHECK(readShift("-1 day") == -24 * 60);
    CHECK(readShift("3 Tage") == 3 * 24 * 60);
    CHECK(readShift("366 jours") == 366 * 24 * 60);
    CHECK(readShift("1d2h") == 26 * 60);
    CHECK(readShift("-1 day 2h30") == -(26 * 60 + 30));
    CHECK(readShift("2 Tage 90 min") == 2 * 24 * 60 + 90);
}

TEST_CASE("What is no length of time sets no clock")
{
    for (const char *text : {"", "+", "soon", "6", "--6h", "- -6h", "2 dogs", "9999999999999 days",
                             "1d -2h", "1d 24h", "1d soon", "1d2"})
        CHECK_FALSE(readShift(text));
}

} // namespace lastrivet::entry
