// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/ListText.h"

#include <catch2/catch.hpp>

#include <string>
#include <string_view>

using namespace lastrivet::exchange;

TEST_CASE("A list in code page 1252 is read as such, one in UTF-8 stays as it is")
{
    CHECK(listText("F\xfcgel; 5 \x80; \x84neu\x93") == "Fügel; 5 €; „neu“");
    CHECK(listText("Flügel; 5 €") == "Flügel; 5 €");
    CHECK(listText("plain").size() == 5);
    CHECK(listText(std::string("\xff\0x", 3)) == std::string("\xff\0x", 3));
}

TEST_CASE("A list in UTF-8 with a bad byte in it is not read as another code, letter for letter")
{
    for (const std::string_view damaged :
         {"Flügel; Höhenruder; \xfc", "\xef\xbb\xbfpart\nR\xfc", "Fl\xfc; Flügel; Höhenruder"})
        CHECK(listText(std::string(damaged)) == damaged);
    // Two letters of code page 1252 that are one of UTF-8 by chance.
    CHECK(listText("\x84N\xd6\x93; F\xfcgel; f\xfcr") == "„NÖ“; Fügel; für");
}
