// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/ImportDocument.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <fstream>
#include <sstream>

using namespace lastrivet;
using namespace lastrivet::exchange;

namespace {

using Said = std::vector<std::string>;

Said errorsOf(std::string_view json)
{
    Said all;
    for (const auto &error : readDocument(json).errors)
        all.push_back(english(error, "f"));
    return all;
}

std::string shippedProfile()
{
    std::ostringstream text;
    text << std::ifstream(LASTRIVET_SOURCE "/resources/profiles/ca.json").rdbuf();
    return text.str();
}

/// What is wrong with a document of a project and these further members.
Said errorsWith(std::string_view members)
{
    return errorsOf(fmt::format(
        R"({{"format": "lastrivet-records", "version": 1, "project": {{"name": "A", "profile": "ca"}}{}{}}})",
        members.empty() ? "" : ", ", members));
}

} // namespace

TEST_CASE("A document without faults has no errors")
{
    CHECK(errorsWith("").empty());
    CHECK(errorsWith(
              R"("squawks": [{"id": 1, "number": "1", "title": "T", "found_on": "2024-02-29"}])")
              .empty());
}

TEST_CASE("What is no JSON is told with line and column")
{
    CHECK(errorsOf("") == Said{"f: The text ends too early, at line 1, column 0."});
    CHECK(errorsOf("{\"format\": \"lastrivet-records\",\n \"version\": 1,\n x}") ==
          Said{"f: This is no JSON at line 3, column 2."});
    CHECK(errorsOf(std::string_view("\xff\xfe{\0", 4)) ==
          Said{"f: The text is no UTF-8 at line 1, column 1."});
    CHECK(errorsOf("[]") == Said{"f: The document is a list, not an object."});
    CHECK(errorsOf("7") == Said{"f: The document is 7, not an object."});
    CHECK(errorsWith("\"people\": [{\"id\": 1, \"name\": \"\xff\"}]") ==
          Said{"f: /people/0/name: person 1: The text is no UTF-8 at line 1, column 120."});
    CHECK(errorsOf(R"({"format": "lastrivet-records", "version": 1,
"project": {"name": "A", "profile": "ca"}} {})") ==
          Said{"f: This is no JSON at line 2, column 44."});
}

TEST_CASE("Another format or version is refused before anything else is said")
{
    CHECK(errorsOf(R"({"squawks": [{"x": 1}]})") ==
          Said{"f: This is no document of format lastrivet-records: format is missing."});
    CHECK(errorsOf(R"({"format": "other", "a": 1, "b": 2})") ==
          Said{"f: /format: “other” is another format than lastrivet-records."});
    CHECK(errorsOf(R"({"format": "lastrivet-records", "version": 2, "new": 1})") ==
          Said{"f: /version: 2 is another version than 1, the only one that is read here."});
    CHECK(errorsOf(R"({"format": "lastrivet-records", "version": 1.0})") ==
          Said{"f: /version: 1.0 is another version than 1, the only one that is read here."});
    CHECK(errorsOf(R"({"format": "lastrivet-records", "version": 1})") ==
          Said{"f: The project is missing."});
}

TEST_CASE("Unknown and doubled names are errors")
{
    CHECK(errorsWith(R"("squawkz": [{"id": {"deep": []}}])") ==
          Said{"f: /squawkz: There is nothing of this name in a document."});
    CHECK(errorsWith(R"("tools": [], "tools": [{"id": 1}])") ==
          Said{"f: /tools: This stands twice in the document."});
    CHECK(errorsWith(
              R"("tools": [{"id": 1, "name": "Wrench", "colour": {"a": [1]}, "name": "B"}])") ==
          Said{"f: /tools/0/colour: tool 1 “Wrench”: There is no field of this name.",
               "f: /tools/0/name: tool 1 “Wrench”: This field stands twice."});
    CHECK(errorsWith(R"("tools": [{"id": 1, "name": "Wrench", "a~b/c": 1}])") ==
          Said{"f: /tools/0/a~0b~1c: tool 1 “Wrench”: There is no field of this name."});
}

TEST_CASE("Whole numbers have no fraction, no exponent and are not beyond their bounds")
{
    const auto estimate = [](std::string_view number) {
        return errorsWith(fmt::format(
            R"("steps": [{{"id": 1, "component_id": 1, "title": "T", "estimate_minutes": {}}}])",
            number));
    };
    CHECK(estimate("9007199254740991").empty());
    const std::string wrong =
        " is no whole number from -9007199254740991 to 9007199254740991, without "
        "fraction or exponent.";
    for (const std::string_view number : {"9007199254740992", "99999999999999999999", "1.0", "1e3",
                                          "-9007199254740992", "\"1\"", "true"}) {
        const auto said = estimate(number);
        REQUIRE(said.size() == 1);
        CHECK(said[0].starts_with("f: /steps/0/estimate_minutes: step 1 “T”: "));
        CHECK(said[0].ends_with(wrong));
    }
    CHECK(estimate("1e999") == Said{"f: /steps/0/estimate_minutes: step 1 “T”: The number at line "
                                    "1, column 167 is too large."});
}

TEST_CASE("Ids run from 1 to the largest and are there once per type")
{
    const auto id = [](std::string_view text) {
        return errorsWith(fmt::format(R"("tools": [{{"id": {}, "name": "Wrench"}}])", text));
    };
    CHECK(id("9007199254740991").empty());
    for (const std::string_view text : {"0", "-1", "9007199254740992", "1.5", "\"7\""}) {
        const auto said = id(text);
        REQUIRE(said.size() == 1);
        CHECK(said[0].find("/tools/0/id: tool: ") != std::string::npos);
        CHECK(said[0].find("is no id: a whole number from 1 to 9007199254740991") !=
              std::string::npos);
    }
    CHECK(id("null") == Said{"f: /tools/0/id: tool: This field must not be null."});
    CHECK(errorsWith(R"("tools": [{"name": "Wrench"}])") ==
          Said{"f: /tools/0: tool: The field id is missing."});
    CHECK(
        errorsWith(R"("tools": [{"id": 1, "name": "A"}, {"id": 1, "name": "B"}], "people": [])") ==
        Said{"f: /tools/1: tool 1 “A”: The id 1 is that of /tools/0 already."});
}

TEST_CASE("Values of another kind are errors that say what is wanted")
{
    CHECK(errorsWith(R"("squawks": [{"id": 1, "number": 1, "title": ["T"], "found_on": "2025-02-29",
        "severity": "grave", "approximate": 1, "verify_by": null, "needs_access_to": 3,
        "not_inside": [1, "x", null], "repair_options": [{"title": "R"}, 5, {"pros": "P"}],
        "component_id": {}}])") ==
          Said{"f: /squawks/0/number: squawk 1: 1 is no text.",
               "f: /squawks/0/title: squawk 1: A list is no text.",
               "f: /squawks/0/found_on: squawk 1: “2025-02-29” is no day or time that exists: "
               "YYYY-MM-DD or YYYY-MM-DDTHH:MM, from 1900 to 2199.",
               "f: /squawks/0/severity: squawk 1: “grave” is none of airworthiness, workmanship, "
               "cosmetic.",
               "f: /squawks/0/approximate: squawk 1: 1 is neither true nor false.",
               "f: /squawks/0/needs_access_to: squawk 1: 3 is no list.",
               "f: /squawks/0/not_inside/1: squawk 1: “x” is no id: a whole number from 1 to "
               "9007199254740991, without fraction or exponent.",
               "f: /squawks/0/not_inside/2: squawk 1: null is no id: a whole number from 1 to "
               "9007199254740991, without fraction or exponent.",
               "f: /squawks/0/repair_options/1: squawk 1: 5 is no object.",
               "f: /squawks/0/repair_options/2: squawk 1: The field title is missing.",
               "f: /squawks/0/component_id: squawk 1: An object is no id: a whole number from 1 to "
               "9007199254740991, without fraction or exponent."});
    CHECK(errorsWith(R"("people": {}, "steps": 7, "tools": [[]])") ==
          Said{"f: /people: This is an object, which does not belong here.",
               "f: /steps: 7 is no list.", "f: /tools/0: This is a list, not an object."});
}

TEST_CASE("U+0000 in a text or key is an error")
{
    CHECK(errorsWith(R"("tools": [{"id": 1, "name": "a\u0000b"}])") ==
          Said{"f: /tools/0/name: tool 1: The character U+0000 is not allowed in a text."});
    CHECK(errorsWith(R"("tools": [{"id": 1, "name": "a", "x\u0000": 1}])").size() == 1);
}

TEST_CASE("U+0000 between or behind the brackets is an error, not the end of the text")
{
    const std::string document =
        R"({"format": "lastrivet-records", "version": 1,
"project": {"name": "A", "profile": "ca"}})";
    const Said expected{"f: The character U+0000 is not allowed, but stands at line 2, column 43."};
    CHECK(errorsOf(document + std::string("\0", 1)) == expected);
    CHECK(errorsOf(document + std::string("\0garbage{{{", 11)) == expected);
    CHECK_FALSE(readDocument(document + std::string("\0", 1)).isComplete);
    CHECK(errorsOf(std::string_view("{\0}", 3)) ==
          Said{"f: The character U+0000 is not allowed, but stands at line 1, column 2."});
}

TEST_CASE("Brackets nest sixteen levels and not one more")
{
    const auto nested = [](std::size_t levels) {
        return errorsWith(
            fmt::format(R"("x": {}{})", std::string(levels, '['), std::string(levels, ']')));
    };
    CHECK(nested(15).size() == 1);
    CHECK(nested(16) == Said{"f: /x: There is nothing of this name in a document.",
                             "f: Brackets are nested more than 16 levels deep."});
    CHECK(errorsOf(std::string(1'000'000, '[')).size() == 1);
    CHECK(errorsWith(R"("tools": [{"id": 1, "name": "Wrench", "note": )" + std::string(15, '[')) ==
          Said{"f: /tools/0/note: tool 1 “Wrench”: A list is no text.",
               "f: /tools/0/note: tool 1 “Wrench”: Brackets are nested more than 16 levels deep."});
}

TEST_CASE("No more than a hundred errors are listed")
{
    std::string tools;
    for (int i = 0; i < 1000; ++i)
        tools += fmt::format("{}{{\"id\": {}}}", i ? ", " : "", i + 1);
    CHECK(errorsWith("\"tools\": [" + tools + "]").size() == 100);
    std::string unknown;
    for (int i = 0; i < 200; ++i)
        unknown += fmt::format(", \"x{}\": 1", i);
    const auto said = errorsWith("\"tools\": [{\"id\": 1, \"name\": \"Wrench\"" + unknown + "}]");
    CHECK(said.size() == 100);
    CHECK(said.back() == "f: /tools/0/x99: tool 1 “Wrench”: There is no field of this name.");
}

TEST_CASE("Whole numbers of the profile copy have no fraction and no exponent either")
{
    const auto withPhotos = [&](std::string_view number) {
        std::string profile = shippedProfile();
        const std::string_view given = "\"interior_photos\": 2";
        profile.replace(profile.find(given), given.size(),
                        fmt::format("\"interior_photos\": {}", number));
        return errorsWith("\"profile_copy\": " + profile);
    };
    CHECK(withPhotos("7").empty());
    for (const std::string_view number :
         {"1.0", "1e0", "0.5", "18446744073709551615", "18446744073709551616"})
        CHECK(withPhotos(number) ==
              Said{"f: /profile_copy/interior_photos: is no whole number from 0 to 1000."});
}

TEST_CASE("What is wrong within the profile copy is told with its place")
{
    const auto said = errorsWith(R"("profile_copy": {"id": "ca", "id": "x"})");
    REQUIRE(said.size() == 1);
    CHECK(said[0].starts_with("f: /profile_copy"));
    const std::string shipped = shippedProfile();
    CHECK(errorsWith("\"profile_copy\": {\"a\": 1, \"b\": {\"c\": 2}, " + shipped.substr(1)) ==
          Said{"f: /profile_copy/a: is no field of a profile.",
               "f: /profile_copy/b: is no field of a profile."});
    CHECK(errorsWith(R"("profile_copy": {"a\u0000": "\u0000", "b": "\u0000", )" +
                     shipped.substr(1)) ==
          Said{std::string("f: /profile_copy/a\0: holds the character U+0000.", 48),
               "f: /profile_copy/b: is no field of a profile."});
    CHECK(errorsWith(R"("profile_copy": null)").empty());
    CHECK(errorsWith(R"("profile_copy": [])").size() == 1);
}
