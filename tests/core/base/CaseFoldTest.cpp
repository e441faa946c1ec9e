// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/CaseFold.h"

#include <catch2/catch.hpp>

using namespace lastrivet;

TEST_CASE("Only A to Z change their case in ASCII")
{
    CHECK(asciiLower("@AZ[ Flügel Ö 12") == "@az[ flügel Ö 12");
    CHECK(asciiUpper("`az{ Flügel ö 12") == "`AZ{ FLüGEL ö 12");
    CHECK(asciiLower("").empty());
}

TEST_CASE("Folding takes the capitals of Latin-1 to lower case, but no other sign")
{
    CHECK(folded("ÀÖØÞ ÉTÉ Ärmel") == "àöøþ été ärmel");
    CHECK(folded("3 × ß ÷ Œ Ł") == "3 × ß ÷ Œ Ł");
}

TEST_CASE("Folded words come without the separators, brackets and quotation marks around them")
{
    CHECK(foldedWords(" Left (RIB 3), \"Öse\";\t[x]\n") ==
          std::vector<std::string>{"left", "rib", "3", "öse", "x"});
    CHECK(foldedWords(" ,;").empty());
}
