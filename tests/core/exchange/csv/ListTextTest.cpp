// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/ListText.h"

#include <catch2/catch.hpp>

using namespace lastrivet::exchange;

TEST_CASE("A list in code page 1252 is read as such, one in UTF-8 stays as it is")
{
    CHECK(listText("F\xfcgel; 5 \x80; \x84neu\x93") == "Fügel; 5 €; „neu“");
    CHECK(listText("Flügel; 5 €") == "Flügel; 5 €");
    CHECK(listText("plain").size() == 5);
    CHECK(listText(std::string("\xff\0x", 3)) == std::string("\xff\0x", 3));
}
