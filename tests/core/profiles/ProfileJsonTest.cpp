// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/profiles/ProfileJson.h"

#include <catch2/catch.hpp>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <vector>

using namespace lastrivet;
using nlohmann::json;

namespace {

std::string shippedText(const std::string &id)
{
    std::ifstream file(LASTRIVET_SOURCE "/resources/profiles/" + id + ".json");
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

/// The refusal of Canada's profile with one value put in at a pointer.
std::string refusalWith(const std::string &pointer, const json &value)
{
    json document = json::parse(shippedText("ca"));
    document[json::json_pointer(pointer)] = value;
    const auto profile = readProfile(document.dump());
    return profile ? "" : english(profile.reason().sentence("ca.json"));
}

std::string refusalOf(std::string_view text)
{
    const auto profile = readProfile(text);
    return profile ? "" : english(profile.reason().sentence("my.json"));
}

} // namespace

TEST_CASE("Every shipped profile is read and written without losing a value")
{
    for (const std::string id : {"ca", "us", "gb", "plain"}) {
        const std::string text = shippedText(id);
        const auto profile = readProfile(text);
        if (!profile)
            FAIL(english(profile.reason().sentence(id)));
        CHECK(profile->id == id);
        CHECK(json::parse(profile->json) == json::parse(text));
    }
}

TEST_CASE("A profile written, read and written again is the same to the byte")
{
    const Profile profile = *readProfile(shippedText("us"));
    const auto again = readProfile(profileJson(profile));
    REQUIRE(again);
    CHECK(*again == profile);
    CHECK(again->json == profileJson(profile));
    CHECK(profile.json.ends_with("}\n"));
}

TEST_CASE("A changed profile is written with its change")
{
    Profile profile = *readProfile(shippedText("plain"));
    profile.interior_photos = 4;
    profile.late_acceptance_by = {SignerRole::Adviser};
    profile.test_period.push_back({.applies_to = "all",
                                   .hours = 12,
                                   .text = "Twelve hours.",
                                   .source = "trade-practice",
                                   .mark = Mark::Memory});

    const Profile again = *readProfile(profileJson(profile));
    CHECK(again.interior_photos == 4);
    CHECK(again.late_acceptance_by == WordSet<SignerRole>{SignerRole::Adviser});
    CHECK(again.test_period.back().hours == 12);
}

TEST_CASE("A word the country does not replace is said in ours")
{
    json document = json::parse(shippedText("gb"));
    CHECK(readProfile(document.dump())->words.squawk == "snag");
    document["words"].erase("squawk");
    CHECK(readProfile(document.dump())->words.squawk == "squawk");
}

TEST_CASE("A wrong value is refused by pointer")
{
    CHECK(refusalWith("/hold_points/1/kind", "peek")
              .starts_with("ca.json: /hold_points/1/kind \"peek\" is none of own_check, "));
    CHECK(refusalWith("/hold_points/0/required", 1) ==
          "ca.json: /hold_points/0/required is neither true nor false.");
    CHECK(refusalWith("/interior_photos", 1.5) ==
          "ca.json: /interior_photos is no whole number from 0 to 1000.");
    CHECK(refusalWith("/interior_photos", -1) ==
          "ca.json: /interior_photos is no whole number from 0 to 1000.");
    CHECK(refusalWith("/late_entry_days", 18446744073709551615u) ==
          "ca.json: /late_entry_days is no whole number from 0 to 3650.");
    CHECK(refusalWith("/edition", "2026-02-30") ==
          "ca.json: /edition \"2026-02-30\" is no day from 1900 to 2199.");
    CHECK(refusalWith("/edition", "2026-02-03T10:00") ==
          "ca.json: /edition \"2026-02-03T10:00\" is no day from 1900 to 2199.");
    CHECK(refusalWith("/name", "") == "ca.json: /name is empty.");
    CHECK(refusalWith("/name", nullptr) == "ca.json: /name is no text.");
    CHECK(refusalWith("/words", json::array()) == "ca.json: /words is no object.");
    CHECK(refusalWith("/sources/0", "a book") == "ca.json: /sources/0 is no object.");
    CHECK(refusalWith("/documents", json::object()) == "ca.json: /documents is no list.");
    CHECK(refusalWith("/late_acceptance_by", json::array()) ==
          "ca.json: /late_acceptance_by has fewer than 1 entries.");
    CHECK(refusalWith("/late_acceptance_by", {"inspector", "inspector"}) ==
          "ca.json: /late_acceptance_by/1 \"inspector\" is listed twice.");
    CHECK(refusalWith("/name", std::string(2001, 'x')) ==
          "ca.json: /name is longer than 2000 bytes.");
    CHECK(refusalWith("/name", std::string("a\0b", 3)) ==
          "ca.json: /name holds the character U+0000.");
}

TEST_CASE("A field that is missing, unknown or doubled is refused by name")
{
    json document = json::parse(shippedText("ca"));
    document["credit"].erase("rules");
    CHECK(refusalOf(document.dump()) == "my.json: /credit/rules is missing.");

    CHECK(refusalWith("/colour~1paint", "blue") ==
          "ca.json: /colour~1paint is no field of a profile.");
    CHECK(refusalOf(R"({"id": "x", "id": "y"})") ==
          "my.json has the field \"id\" twice in one object.");
}

TEST_CASE("Everything that is wrong with a profile is told at once, up to a hundred faults")
{
    json document = json::parse(shippedText("ca"));
    document["colour"] = "blue";
    document["interior_photos"] = "x";
    document["basis"][1]["rule"] = "guess";
    document["basis"][2].erase("mark");
    document["documents"][2]["source"] = "hearsay";
    document["name"] = "";
    std::vector<std::string> places;
    for (const auto &fault : profileFaults(document.dump()))
        places.push_back(fault.pointer);
    CHECK(places == std::vector<std::string>{"/name", "/interior_photos", "/basis/1/rule",
                                             "/basis/2/mark", "/colour", "/documents/2/source"});
    CHECK(profileFaults(shippedText("ca")).empty());
    CHECK(profileFaults("{} {}").size() == 1);
    for (int i = 0; i < 200; ++i)
        document["colour" + std::to_string(i)] = i;
    CHECK(profileFaults(document.dump()).size() == 100);
}

TEST_CASE("A source that cannot be read is no source that is not listed")
{
    json document = json::parse(shippedText("ca"));
    document["sources"][0].erase("title");
    CHECK(profileFaults(document.dump()).size() == 1);
    document.erase("sources");
    CHECK(profileFaults(document.dump()).size() == 1);
}

TEST_CASE("A source has to be listed, once")
{
    CHECK(refusalWith("/documents/2/source", "hearsay") ==
          "ca.json: /documents/2/source \"hearsay\" is none of the listed sources.");
    json document = json::parse(shippedText("ca"));
    document["sources"].push_back(document["sources"][0]);
    const std::string last = std::to_string(document["sources"].size() - 1);
    CHECK(refusalOf(document.dump()) ==
          "my.json: /sources/" + last + "/id \"awm-549\" is there already.");
}

TEST_CASE("A key that could lead to another file is no key")
{
    for (const char *id : {"../ca", "a/b", "CA", "c a", "-ca", "é"})
        CHECK(refusalWith("/id", id).starts_with("ca.json: /id \""));
    CHECK(refusalWith("/id", std::string(65, 'a')).starts_with("ca.json: /id \""));
    CHECK(refusalWith("/id", std::string(64, 'a')).empty());
}

TEST_CASE("What is no JSON is told by line and column")
{
    CHECK(refusalOf("") == "my.json is not JSON at line 1, column 1.");
    CHECK(refusalOf("{\n \"id\": ca\n}").starts_with("my.json is not JSON at line 2, column "));
    CHECK(refusalOf("{\"id\": \"\xC3\x28\"}").starts_with("my.json is not JSON at line 1"));
    CHECK(refusalOf("{} {}").starts_with("my.json is not JSON at line 1"));
    CHECK(refusalOf(shippedText("plain") + std::string("\0{", 2))
              .starts_with("my.json holds the character U+0000 at line "));
    CHECK(refusalOf("null") == "my.json is no object.");
    CHECK(refusalOf("{\"interior_photos\": 1e999}") == "my.json holds a number that is too large.");
}

TEST_CASE("A hostile text costs one sentence")
{
    CHECK(refusalOf(std::string(100'000, '[')) == "my.json is nested more than 8 deep.");
    CHECK(refusalOf(std::string(1024 * 1024 + 1, ' ')) == "my.json is longer than 1 MiB.");
    std::string nested;
    for (int i = 0; i < 50'000; ++i)
        nested += "{\"a\":";
    CHECK(refusalOf(nested) == "my.json is nested more than 8 deep.");
    const std::string shown = refusalWith("/credit_basis", std::string(500, 'x') + "\n\x01");
    CHECK(shown.size() < 150);
    CHECK(shown.find('\n') == std::string::npos);
}

TEST_CASE("A profile cut off anywhere is refused, never half read")
{
    const std::string text = shippedText("plain");
    for (std::size_t length = 0; length + 2 < text.size(); length += 397)
        CHECK_FALSE(refusalOf(std::string_view(text).substr(0, length)).empty());
}

TEST_CASE("A profile with one byte changed is refused or read, and nothing worse")
{
    const std::string text = shippedText("plain");
    std::size_t refused = 0;
    for (std::size_t at = 0; at < text.size(); at += 101) {
        for (const char byte : {'\0', '"', '}', '\xFF', '9'}) {
            std::string changed = text;
            changed[at] = byte;
            const auto profile = readProfile(changed);
            refused += !profile;
            if (profile)
                CHECK(readProfile(profile->json));
        }
    }
    CHECK(refused > text.size() / 101);
}
