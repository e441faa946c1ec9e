// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/VisibleText.h"

#include <catch2/catch.hpp>

using lastrivet::visibleText;

TEST_CASE("Ordinary words, in any language, with lines and tabs, are shown as they are")
{
    const auto *text = GENERATE("", "Left wing", "two\n\tlines\r\n", "Flügel 40 °C “gut”…",
                                "\u200Eשלום\u200F", "翼\u2028", "\xE2", "\xC2", "\xE2\x80");
    CHECK(visibleText(text) == text);
}

TEST_CASE("What steers a terminal is shown as a sign")
{
    CHECK(visibleText("a\x1b[2Jb") == "a\u241B[2Jb");
    CHECK(visibleText(std::string_view("a\0b", 3)) == "a\u2400b");
    CHECK(visibleText("\x7f\u0085\u009b2J") == "\u2421\uFFFD\uFFFD2J");
}

TEST_CASE("What would turn the order of reading round is shown as a sign")
{
    // "signed" behind an override would read as "dengis".
    CHECK(visibleText("not \u202Edengis\u202C") == "not \uFFFDdengis\uFFFD");
    CHECK(visibleText("\u2066a\u2069") == "\uFFFDa\uFFFD");
}
