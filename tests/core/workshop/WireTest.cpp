// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workshop/Wire.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace lastrivet;
using namespace lastrivet::workshop;

namespace {

/// AC 43.13-1B CHG 1 (9/27/01) table 11-9, written out here: amperes by rating, ohms per 1,000 ft.
struct TableRow {
    std::string_view gauge;
    double a105, a150, a200, ohms;
};
constexpr TableRow table119[]{
    {"24", 2.5, 4, 5, 28.4},      {"22", 3, 5, 6, 16.2},         {"20", 4, 7, 9, 9.88},
    {"18", 6, 9, 12, 6.23},       {"16", 7, 11, 14, 4.81},       {"14", 10, 14, 18, 3.06},
    {"12", 13, 19, 25, 2.02},     {"10", 17, 26, 32, 1.26},      {"8", 38, 57, 71, 0.70},
    {"6", 50, 76, 97, 0.44},      {"4", 68, 103, 133, 0.28},     {"2", 95, 141, 179, 0.18},
    {"1", 113, 166, 210, 0.15},   {"0", 128, 192, 243, 0.12},    {"00", 147, 222, 285, 0.09},
    {"000", 172, 262, 335, 0.07}, {"0000", 204, 310, 395, 0.06},
};

/// Tables 11-7 and 11-8: size, feet, amperes, what the product is, what is printed.
struct Example {
    std::string_view gauge;
    double feet, product, printed;
};
constexpr Example examples[]{
    {"6", 107, 0.9416, 0.942},
    {"4", 90, 0.504, 0.504},
    {"14", 100, 6.12, 6.12},
    {"10", 39, 0.9828, 0.98},
    {"10", 156, 3.9312, 3.93},
    {"10", 273, 6.8796, 6.88},
    // Misprints: the third line of 11-7 prints 3.6, the second of 11-8 prints .366.
    {"12", 88, 3.5552, 3.6},
    {"10", 19.5, 0.4914, 0.366},
};

} // namespace

TEST_CASE("Every row of AC 43.13-1B table 11-9 is given")
{
    REQUIRE(gauges().size() == std::size(table119));
    for (const auto &row : table119) {
        CAPTURE(std::string(row.gauge));
        const auto run = wireRun(row.gauge, 1000, 1, Rating::C105);
        REQUIRE(run);
        CHECK(run->drop == Approx(row.ohms));
        CHECK(run->most_amps == row.a105);
        CHECK(wireRun(row.gauge, 1, 1, Rating::C150)->most_amps == row.a150);
        CHECK(wireRun(row.gauge, 1, 1, Rating::C200)->most_amps == row.a200);
    }
}

TEST_CASE("The drops of AC 43.13-1B tables 11-7 and 11-8 are worked out, its two misprints not")
{
    int misprints = 0;
    for (const auto &example : examples) {
        CAPTURE(std::string(example.gauge), example.feet);
        const auto run = wireRun(example.gauge, example.feet, 20, Rating::C200);
        REQUIRE(run);
        CHECK(run->drop == Approx(example.product));
        if (std::abs(run->drop - example.printed) > 0.005)
            ++misprints;
    }
    CHECK(misprints == 2);
    // The program's own copy of the tables says at both lines that they do not fit.
    const auto &table = WorkshopTable::named("voltage_drop_examples");
    int noted = 0;
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        const bool isMisprint = std::abs(table.number(row, "published_drop_V").value() -
                                         table.number(row, "computed_drop_V").value()) > 0.005;
        CHECK(isMisprint == (table.text(row, "note").find("DOES NOT MATCH") != std::string::npos));
        noted += isMisprint ? 1 : 0;
    }
    CHECK(noted == 2);
}

TEST_CASE("The thinnest wire keeps both drop and current")
{
    // AC 43.13-1B chapter 11, chart example: 50 ft, 20 A, 28 V: between 8 and 10, take 8.
    const auto chart = thinnestWire(50, 20, 1, Rating::C105);
    REQUIRE(chart);
    CHECK(chart->gauge == "8");
    // A short wire is as thick as its current wants.
    CHECK(thinnestWire(1, 25, 1, Rating::C105)->gauge == "8");
    CHECK(thinnestWire(1, 25, 1, Rating::C200)->gauge == "12");
    // The limit itself is kept: table 11-8, 39 ft of 10 at 20 A loses .9828 V.
    CHECK(thinnestWire(39, 20, 39 * 20 * 0.00126, Rating::C150)->gauge == "10");
    CHECK_FALSE(thinnestWire(1000, 300, 0.5, Rating::C200));
    CHECK_FALSE(thinnestWire(10, 5, 0, Rating::C200));
}

TEST_CASE("The voltage drop of a wire grows with its temperature, which is from -100 to 300 °C")
{
    // AC 43.13-1B CHG 1 chapter 11, copper: L2 = 254.5 L1 / (234.5 + T2): at the length L2 a wire
    // of T2 loses what L1 loses at 20 °C.
    const double longer = 50;
    const double hot = 254.5 * longer / (234.5 + 100);
    CHECK(wireRun("14", hot, 5, Rating::C150, 100)->drop ==
          Approx(wireRun("14", longer, 5, Rating::C150)->drop));
    // Chosen, and wider than any insulation bears: beyond that somebody mistyped.
    CHECK(wireRun("14", 5, 5, Rating::C150, -100));
    CHECK(wireRun("14", 5, 5, Rating::C150, 300));
    CHECK_FALSE(wireRun("14", 5, 5, Rating::C150, -101));
    CHECK_FALSE(wireRun("14", 5, 5, Rating::C150, 301));
}

TEST_CASE("Sizes that the table has not, and loads that cannot be, get one sentence")
{
    CHECK(english(wireRun("7", 5, 5, Rating::C105).reason()).find("no wire size 7") !=
          std::string::npos);
    CHECK(english(wireRun("x", 5, 5, Rating::C105).reason()).find("no wire size x") !=
          std::string::npos);
    CHECK_FALSE(wireRun("12", 0, 5, Rating::C105));
    CHECK_FALSE(wireRun("12", 5, -1, Rating::C105));
    CHECK_FALSE(wireRun("12", std::nan(""), 1, Rating::C105));
    CHECK_FALSE(wireRun("12", 1e300, 1e300, Rating::C105));
    CHECK(gaugeNumber("2/0") == gaugeNumber("00"));
    CHECK(gaugeNumber("1/0") == 0);
    for (const auto *wrong : {"", "/0", "-3", "12a", "0/0", "99"})
        CHECK_FALSE(gaugeNumber(wrong));
}

TEST_CASE("Crimped terminals are judged by two bases that differ by about two")
{
    // MIL-T-7928 / AS7928 class 2, 18 AWG: 38 lb; UL 486A: 20 lb.
    const auto pulls = crimpPulls("18");
    REQUIRE(pulls.size() == 2);
    CHECK(pulls[0].basis == "military");
    CHECK(pulls[0].least == 38);
    CHECK(pulls[1].least == 20);
    // Of thick wires the military values are remembered only.
    const auto thick = crimpPulls("00");
    REQUIRE(thick.size() == 2);
    CHECK(thick[0].source.isFromMemory());
    CHECK_FALSE(thick[1].source.isFromMemory());
}

TEST_CASE("How many strands may be nicked is what AC 43.13-1B table 11-13 says")
{
    struct Row {
        std::string_view gauge;
        double nicked, broken;
    };
    for (const auto &row :
         {Row{"24", 2, 0}, Row{"14", 2, 0}, Row{"12", 4, 0}, Row{"10", 4, 0}, Row{"8", 6, 6},
          Row{"4", 6, 6}, Row{"1", 6, 6}, Row{"00", 6, 6}, Row{"0000", 6, 6}}) {
        CAPTURE(std::string(row.gauge));
        const auto limit = strandLimit(row.gauge);
        REQUIRE(limit);
        CHECK(limit->nicked == row.nicked);
        CHECK(limit->broken == row.broken);
    }
    CHECK_FALSE(strandLimit("26"));
}
