// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/SquawkLine.h"

#include <catch2/catch.hpp>

namespace lastrivet::entry {

namespace {

/// Two parts to name, on 14 March 2026.
struct Bench {
    Bench()
    {
        records.put(RecordType::Component, &aileron);
        records.put(RecordType::Component, &rib);
        records.put(RecordType::Component, &otherRib);
    }
    SquawkReading read(std::string_view line) const
    {
        return readSquawk(line, PartFinder(records), around);
    }

    Component aileron{.id = Id<Component>{3}, .code = "LA", .name = "Left aileron"};
    Component rib{.id = Id<Component>{4}, .code = "R1", .name = "Rib one"};
    Component otherRib{.id = Id<Component>{5}, .code = "R2", .name = "Rib two"};
    Records records;
    SquawkSurroundings around{*Moment::parse("2026-03-14"), {}, {}};
};

} // namespace

TEST_CASE("A squawk told in one line gives part, severity and title")
{
    const Bench bench;
    const auto whole = bench.read("left aileron airworthiness: crack at hinge 2").squawk;
    CHECK(whole.component_id == bench.aileron.id);
    CHECK(whole.severity == Severity::Airworthiness);
    CHECK(whole.title == "crack at hinge 2");
    const auto plain = bench.read("scratch on the spinner").squawk;
    CHECK_FALSE(plain.component_id);
    CHECK(plain.severity == Severity::Workmanship);
    CHECK(plain.title == "scratch on the spinner");
    CHECK(bench.read("cosmetic: scratch").squawk.title == "scratch");
}

TEST_CASE("The day on which it was found may stand in front, and not lie ahead")
{
    const Bench bench;
    const auto read = bench.read("yesterday LA: dent");
    CHECK(read.squawk.found_on == Moment::parse("2026-03-13"));
    CHECK(read.squawk.component_id == bench.aileron.id);
    CHECK_FALSE(read.problem);
    CHECK(bench.read("LA 2026-03-15: dent").problem);
    CHECK_FALSE(bench.read("LA: dent").squawk.found_on);
}

TEST_CASE("A line without a title cannot be kept")
{
    const Bench bench;
    CHECK(bench.read("").problem);
    CHECK(bench.read("   ").problem);
    CHECK(bench.read("LA:").problem);
    CHECK(bench.read("LA cosmetic:  ").problem);
    CHECK_FALSE(bench.read("LA").problem);
}

TEST_CASE("What is in front of the colon and no part stays in the title, and that is said")
{
    const Bench bench;
    const auto unknown = bench.read("note to self: look again");
    CHECK(unknown.squawk.title == "note to self: look again");
    REQUIRE(unknown.remark);
    CHECK(english(*unknown.remark).find("No part is called “note to self”") == 0);
    const auto written = bench.read("Höhenruder Öse, today: bent");
    REQUIRE(written.remark);
    CHECK(english(*written.remark).find("No part is called “Höhenruder Öse”") == 0);
    const auto several = bench.read("rib: nick");
    CHECK_FALSE(several.squawk.component_id);
    REQUIRE(several.remark);
    CHECK(english(*several.remark).find("Several parts fit “rib”") == 0);
    CHECK_FALSE(several.problem);
}

TEST_CASE("A line that names no part is about the part that is looked at")
{
    Bench bench;
    bench.around.part_shown = bench.rib.id;
    CHECK(bench.read("dent").squawk.component_id == bench.rib.id);
    CHECK(bench.read("dent").isPartTheShownOne);
    const auto named = bench.read("LA: dent");
    CHECK(named.squawk.component_id == bench.aileron.id);
    CHECK_FALSE(named.isPartTheShownOne);
}

TEST_CASE("A severity may be said in the words of the screen")
{
    Bench bench;
    bench.around.severity_words = {"Lufttüchtigkeit", "Ausführung", "Optik"};
    CHECK(bench.read("LA optik: Kratzer").squawk.severity == Severity::Cosmetic);
    CHECK(bench.read("lufttüchtigkeit: Riss").squawk.severity == Severity::Airworthiness);
    CHECK(bench.read("cosmetic: Kratzer").squawk.severity == Severity::Cosmetic);
}

TEST_CASE("The words of the part at the cursor leave out severity, day and title")
{
    const Bench bench;
    const std::string line = "cosmetic left ail: dent";
    const PartFinder parts(bench.records);
    const auto words = squawkPartWordsAt(line, 17, parts, bench.around);
    CHECK(words.text == "left ail");
    CHECK(line.substr(words.begin, words.end - words.begin) == "left ail");
    CHECK(squawkPartWordsAt(line, 20, parts, bench.around).text.empty());
    CHECK(squawkPartWordsAt(line, 4, parts, bench.around).text.empty());
}

TEST_CASE("A part whose name begins like a day is that part")
{
    Bench bench;
    const Component visor{.id = Id<Component>{6}, .name = "Sun visor"};
    bench.records.put(RecordType::Component, &visor);
    const auto read = bench.read("Sun visor: cracked").squawk;
    CHECK(read.component_id == visor.id);
    CHECK_FALSE(read.found_on);
    const auto dated = bench.read("sun Sun visor cosmetic: cracked").squawk;
    CHECK(dated.component_id == visor.id);
    CHECK(dated.found_on == Moment::parse("2026-03-08"));
    CHECK(dated.severity == Severity::Cosmetic);
}

} // namespace lastrivet::entry
