// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Tongue.h"

#include <catch2/catch.hpp>

#include <map>

namespace lastrivet {

namespace {

Tongue german()
{
    return {[](std::string_view pattern) {
                static const std::map<std::string, std::string, std::less<>> words{
                    {"{0} is not signed", "{0} ist nicht unterschrieben"},
                    {"{0} in {1}", "{1}: {0}"},
                    {"independent check", "unabhängige Prüfung"},
                    {"early check", "überholte Prüfung"}};
                const auto found = words.find(pattern);
                return found == words.end() ? std::string(pattern) : found->second;
            },
            {}};
}

} // namespace

TEST_CASE("A message inside a message is said in the language of the whole")
{
    const Message check{"independent check", {}};
    const Message inWing{"{0} in {1}", {nested(check), "LW"}};
    const Message whole{"{0} is not signed", {nested(inWing)}};
    CHECK(english(whole) == "independent check in LW is not signed");
    CHECK(said(whole, german()) == "LW: unabhängige Prüfung ist nicht unterschrieben");
}

TEST_CASE("A name that begins a sentence begins with a capital, letters with marks too")
{
    CHECK(english({"{0} is not signed", {nestedFirst({"early check", {}})}}) ==
          "Early check is not signed");
    CHECK(said({"{0} is not signed", {nestedFirst({"early check", {}})}}, german()) ==
          "Überholte Prüfung ist nicht unterschrieben");
}

TEST_CASE("Texts of the records pass through as they are, whatever is in them")
{
    for (const std::string text : {"", "3:abc", "{0} {1}", "\x01",
                                   "\x01"
                                   "99:short",
                                   "\x02"
                                   "x"}) {
        CHECK(english({"“{0}”", {text}}) == "“" + text + "”");
        CHECK(english({"“{0}”", {nested(verbatim(text))}}) == "“" + text + "”");
    }
}

TEST_CASE("A text that poses as a message inside a message cannot make a sentence grow without end")
{
    // Each level says the one inside it forty times.
    std::string text = "x";
    for (int level = 0; level < 5; ++level) {
        std::string pattern;
        for (int i = 0; i < 40; ++i)
            pattern += "{0}";
        text = '\x01' + std::to_string(pattern.size()) + ':' + pattern +
               std::to_string(text.size()) + ':' + text;
    }
    CHECK(english({"“{0}”", {text}}).size() < 10 * text.size());
}

TEST_CASE("A long text of the records is said whole, in however many frames it stands")
{
    const std::string note(100'000, 'n');
    const Message inner{"{0}: {1}", {"LW", note}};
    CHECK(english({"“{0}” is open", {nested(inner)}}) == "“LW: " + note + "” is open");
}

} // namespace lastrivet
