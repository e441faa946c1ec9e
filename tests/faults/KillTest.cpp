// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/Kills.h"

#include <catch2/catch.hpp>

using namespace lastrivet::faults;

TEST_CASE("A program that is killed loses nothing that it said was saved, and leaves no half",
          "[kill]")
{
    unsigned seed = 1;
    for (const auto &each : acts()) {
        ++seed;
        if (each.effect != Effect::OnFiles)
            DYNAMIC_SECTION(each.name)
            {
                killOften(each, seed);
            }
    }
}
