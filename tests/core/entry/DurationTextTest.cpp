// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/DurationText.h"

#include <catch2/catch.hpp>

namespace lastrivet::entry {

TEST_CASE("Durations are read in every way in which people write them")
{
    CHECK(parseDuration("2h15") == Minutes{135});
    CHECK(parseDuration("2 h 15") == Minutes{135});
    CHECK(parseDuration("2h 15m") == Minutes{135});
    CHECK(parseDuration("2 hours") == Minutes{120});
    CHECK(parseDuration("1:30") == Minutes{90});
    CHECK(parseDuration("90m") == Minutes{90});
    CHECK(parseDuration("90 min") == Minutes{90});
    CHECK(parseDuration(".5h") == Minutes{30});
    CHECK(parseDuration("1,5 h") == Minutes{90});
    CHECK(parseDuration("0.25H") == Minutes{15});
    CHECK(parseDuration("53 h 30") == Minutes{3210});
}

TEST_CASE("What is no duration is none")
{
    for (const auto text : {"", "2", "h", "1:60", "2h75", "-2h", "0m", "0h00", "100h", "1.5",
                            "1:", "2h15x", "99999999999999999999m", "1.2345678h", "nan h"})
        CHECK_FALSE(parseDuration(text).has_value());
}

} // namespace lastrivet::entry
