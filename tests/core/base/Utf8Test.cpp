// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Utf8.h"

#include <catch2/catch.hpp>

using lastrivet::firstNotUtf8;

// The edges are those of table 3-7, Well-Formed UTF-8 Byte Sequences, of the Unicode Standard.
TEST_CASE("The edges of each row of well-formed sequences are well-formed")
{
    for (const char *text :
         {"", "a", "\x7f", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xE0\xBF\xBF", "\xE1\x80\x80",
          "\xEC\xBF\xBF", "\xED\x80\x80", "\xED\x9F\xBF", "\xEE\x80\x80", "\xEF\xBF\xBF",
          "\xF0\x90\x80\x80", "\xF0\xBF\xBF\xBF", "\xF1\x80\x80\x80", "\xF3\xBF\xBF\xBF",
          "\xF4\x80\x80\x80", "\xF4\x8F\xBF\xBF"})
        CHECK_FALSE(firstNotUtf8(text));
}

TEST_CASE("A long text is looked at to its end")
{
    for (std::size_t length = 0; length < 40; ++length) {
        const std::string plain(length, 'r');
        CHECK_FALSE(firstNotUtf8(plain));
        CHECK(firstNotUtf8(plain + "\xC2") == length);
        CHECK(firstNotUtf8(plain + "\xC2" + plain + "ö") == length);
        CHECK_FALSE(firstNotUtf8(plain + "ö" + plain));
    }
}

TEST_CASE("A sequence one beyond an edge is not well-formed, and its offset is given")
{
    for (const char *text : {"\x80", "\xC0\x80", "\xC1\xBF", "\xC2\x7f", "\xC2\xC0", "\xE0\x9F\xBF",
                             "\xED\xA0\x80", "\xE1\x80\x7f", "\xF0\x8F\xBF\xBF", "\xF4\x90\x80\x80",
                             "\xF5\x80\x80\x80", "\xFF", "\xC2", "\xE1\x80", "\xF1\x80\x80"}) {
        CHECK(firstNotUtf8(text) == 0u);
        CHECK(firstNotUtf8("ab" + std::string(text)) == 2u);
        CHECK(firstNotUtf8("Lastrivet" + std::string(text)) == 9u);
        CHECK(firstNotUtf8(text + std::string("Lastrivet")) == 0u);
    }
}

TEST_CASE("The beginning of a text is cut between characters, never through one")
{
    using lastrivet::prefixOf;
    CHECK(prefixOf("Flügel", 7) == "Flügel");
    CHECK(prefixOf("Flügel", 6) == "Flüge");
    CHECK(prefixOf("Flügel", 4) == "Flü");
    CHECK(prefixOf("Flügel", 3) == "Fl");
    CHECK(prefixOf("翼", 2) == "");
    CHECK(prefixOf("", 0) == "");
}

TEST_CASE("What keeps a text from being well-formed is replaced, the rest stays")
{
    CHECK(lastrivet::wellFormed("Flügel 翼") == "Flügel 翼");
    CHECK(lastrivet::wellFormed("") == "");
    CHECK(lastrivet::wellFormed(std::string_view("a\0b", 3)) == "a\uFFFDb");
    CHECK(lastrivet::wellFormed("\xffz\xc3") == "\uFFFDz\uFFFD");
    CHECK(lastrivet::wellFormed(std::string_view("\xe2\x80\0ö\xff\0", 7)) ==
          "\uFFFD\uFFFD\uFFFDö\uFFFD\uFFFD");
    // A surrogate in UTF-8 is three bytes that stand for nothing.
    CHECK(lastrivet::wellFormed("\xed\xa0\x80") == "\uFFFD\uFFFD\uFFFD");
}
