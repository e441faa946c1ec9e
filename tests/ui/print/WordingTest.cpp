// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Wording.h"

#include <catch2/catch.hpp>

using namespace lastrivet;

TEST_CASE("A time to wait is printed in days as soon as it has two of them")
{
    const print::Wording words;
    CHECK(words.span(Minutes{90}).toStdString() == "1 h 30");
    CHECK(words.span(Minutes{47 * 60}).toStdString() == "47 h 00");
    CHECK(words.span(Minutes{48 * 60}).toStdString() == "2 d");
    CHECK(words.span(Minutes{336 * 60}).toStdString() == "14 d");
    CHECK(words.span(Minutes{54 * 60}).toStdString() == "2 d 6 h");
    CHECK(words.span(Minutes{54 * 60 + 30}).toStdString() == "2 d 6 h 30");
}
