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

TEST_CASE("A list in UTF-16 is read by the mark in front of it, in either order")
{
    const std::string_view little("\xFF\xFEN\0\xFC\0\t\0\xAC\x20\n\0", 12);
    const std::string_view big("\xFE\xFF\0N\0\xFC\0\t\x20\xAC\0\n", 12);
    CHECK(listText(std::string(little)) == "Nü\t€\n");
    CHECK(listText(std::string(big)) == "Nü\t€\n");
    // U+1F6E9, in two halves; one of them alone is no letter.
    CHECK(listText(std::string("\xFF\xFE\x3D\xD8\xE9\xDE", 6)) == "\xF0\x9F\x9B\xA9");
    const std::string half("\xFF\xFE\x3D\xD8N\0", 6);
    CHECK(listText(half) == half);
    const std::string odd("\xFF\xFEN\0\t", 5);
    CHECK(listText(odd) == odd);
}

TEST_CASE("A list in UTF-8 with a bad byte in it is not read as another code, letter for letter")
{
    for (const std::string_view damaged :
         {"Flügel; Höhenruder; \xfc", "\xef\xbb\xbfpart\nR\xfc", "Fl\xfc; Flügel; Höhenruder"})
        CHECK(listText(std::string(damaged)) == damaged);
    // Two letters of code page 1252 that are one of UTF-8 by chance.
    CHECK(listText("\x84N\xd6\x93; F\xfcgel; f\xfcr") == "„NÖ“; Fügel; für");
}
