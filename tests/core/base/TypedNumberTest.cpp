// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/TypedNumber.h"

#include <catch2/catch.hpp>

#include <string>

using namespace lastrivet;

TEST_CASE("A typed number has a point or a comma, and what stands behind it stays")
{
    std::string_view text = "8,5 N-m";
    CHECK(takeNumber(text) == 8.5);
    CHECK(text == "N-m");
    text = "-0.125in";
    CHECK(takeNumber(text) == -0.125);
    CHECK(text == "in");
    text = "−2,5 mm";
    CHECK(takeNumber(text) == -2.5);
    CHECK(text == "mm");
    text = ".4 mm";
    CHECK(takeNumber(text) == 0.4);
    CHECK(text == "mm");
    text = "-.125";
    CHECK(takeNumber(text) == -0.125);
    text = "1,850 mm";
    CHECK(takeNumber(text, DecimalSign::Comma) == 1.85);
    text = "28-36";
    CHECK(takeNumber(text) == 28.0);
    CHECK(text == "-36");
}

TEST_CASE("What could be a thousand, and what is no number, is left where it was")
{
    for (const std::string_view typed :
         {"1,850 mm", "inf", "nan", "1.2.3", ".4.5", ".", "..4", "x", "", "−", "−-2"}) {
        INFO(typed);
        std::string_view text = typed;
        CHECK_FALSE(takeNumber(text));
        CHECK(text == typed);
    }
}

TEST_CASE("Two numbers are parted by a dash or by a word")
{
    for (const std::string_view typed :
         {"8,5-10", "8.5 – 10", "8,5 to 10", "8,5 bis 10", "8,5 à 10", "8.5−10", "8.5 — 10",
          "8.5\u201110", "8.5 \u2012 10", "between 8.5 and 10", "zwischen 8,5 und 10",
          "entre 8,5 et 10", "from 8.5 to 10", "Von 8,5 bis 10", "de 8,5 à 10"}) {
        INFO(typed);
        std::string_view text = typed;
        CHECK(takeRange(text) == std::pair(8.5, 10.0));
        CHECK(text.empty());
    }
    std::string_view text = "8,5 -";
    CHECK_FALSE(takeRange(text));
    CHECK(text == "8,5 -");
}

TEST_CASE("A comma parts a line unless figures stand on both its sides")
{
    using Parts = std::vector<std::string_view>;
    CHECK(partsOfLine("hinge, M6, drag 2,5, split pin") ==
          Parts{"hinge", "M6", "drag 2,5", "split pin"});
    CHECK(partsOfLine(" a,,b , ") == Parts{"a", "b"});
    CHECK(partsOfLine("Holm; M6; 8,5-10 Nm;6") == Parts{"Holm", "M6", "8,5-10 Nm", "6"});
    CHECK(partsOfLine("").empty());
}
