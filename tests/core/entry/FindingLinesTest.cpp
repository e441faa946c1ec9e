// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/FindingLines.h"

#include "core/records/Records.h"

#include <catch2/catch.hpp>

namespace lastrivet::entry {

namespace {

using Lines = std::vector<std::pair<std::string, std::string>>;

Moment day()
{
    return *Moment::parse("2026-03-14");
}

Records wing()
{
    Records records;
    records.components.put({.id = Id<Component>{1}, .code = "LW-R3", .name = "Rib 3"});
    return records;
}

Lines read(std::string_view text)
{
    Lines lines;
    for (const FindingLine &line : readFindings(text, PartFinder(wing()), day()))
        lines.emplace_back(line.number, line.title);
    return lines;
}

} // namespace

TEST_CASE("A finding a line, numbered as the sheet numbers it")
{
    const Lines wanted{{"1", "Chafed wire"}, {"2", "Drain is blocked"}};
    CHECK(read("1. Chafed wire\n2. Drain is blocked\n") == wanted);
    CHECK(read("1) Chafed wire\r\n\r\n  2) Drain is blocked") == wanted);
    CHECK(read("(1) Chafed wire\n(2) Drain is blocked") == wanted);
    CHECK(read("No. 1: Chafed wire\n#2 Drain is blocked") == wanted);
    CHECK(read("1 – Chafed wire\n2 - Drain is blocked") == wanted);
    CHECK(read("12b. Chafed wire") == Lines{{"12b", "Chafed wire"}});
}

TEST_CASE("Lines without numbers are findings of their own; a quantity is no number of a finding")
{
    CHECK(read("Chafed wire\n2 rivets are missing\n") ==
          Lines{{"", "Chafed wire"}, {"", "2 rivets are missing"}});
    CHECK(read("").empty());
    CHECK(read("\n  \n").empty());
}

TEST_CASE("On a numbered sheet a line without number goes on with the one above it")
{
    CHECK(read("1. Chafed wire\n   behind the rib\n2. Drain is blocked") ==
          Lines{{"1", "Chafed wire behind the rib"}, {"2", "Drain is blocked"}});
}

TEST_CASE("A part and a severity may stand in front of a colon")
{
    const auto lines =
        readFindings("3. LW-R3 airworthiness: Crack at the flange", PartFinder(wing()), day());
    REQUIRE(lines.size() == 1);
    CHECK(lines[0].number == "3");
    CHECK(lines[0].part == Id<Component>{1});
    CHECK(lines[0].severity == Severity::Airworthiness);
    CHECK(lines[0].title == "Crack at the flange");
}

TEST_CASE("What stands in front of a number decides whether it is one")
{
    CHECK(read("N° 1 Chafed") == Lines{{"", "N° 1 Chafed"}});
    CHECK(read("no rivets here") == Lines{{"", "no rivets here"}});
    CHECK(read("No 7 - Chafed") == Lines{{"7", "Chafed"}});
    CHECK(read("#7 -Chafed") == Lines{{"7", "-Chafed"}});
    CHECK(read("1234. Chafed") == Lines{{"", "1234. Chafed"}});
    CHECK(read("1.5 mm gap") == Lines{{"", "1.5 mm gap"}});
    CHECK(read("3 . Chafed") == Lines{{"3", "Chafed"}});
    CHECK(read("3.") == Lines{{"", "3."}});
}

TEST_CASE("A line as long as a whole report is read like any other")
{
    const std::string words(60'000, 'x');
    CHECK(read("3. " + words) == Lines{{"3", words}});
    CHECK(read(words) == Lines{{"", words}});
}

TEST_CASE("The day that a line names is kept, unless it is still to come")
{
    const auto lines =
        readFindings("1. LW-R3 2026-03-10: Crack\n2. LW-R3: Burr\n3. 2026-03-20: Dent",
                     PartFinder(wing()), day());
    REQUIRE(lines.size() == 3);
    CHECK(lines[0].found_on == Moment::parse("2026-03-10"));
    CHECK(lines[0].part == Id<Component>{1});
    CHECK_FALSE(lines[1].found_on);
    CHECK_FALSE(lines[2].found_on);
}

} // namespace lastrivet::entry
