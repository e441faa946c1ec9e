// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workshop/Sheet.h"

#include "core/workshop/Inches.h"
#include "core/workshop/Rivet.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace lastrivet;
using namespace lastrivet::workshop;

TEST_CASE("The setback of a bend is what AC 43.13-1B prints")
{
    // AC 43.13-1B p. 4-14: .064 sheet, radius .25: 45 degrees .130, 135 degrees .758.
    CHECK(*setback(45, 0.25, 0.064) == Approx(0.130).margin(0.0005));
    CHECK(*setback(135, 0.25, 0.064) == Approx(0.758).margin(0.0005));
    // A right angle: K is 1.
    CHECK(*setback(90, 0.25, 0.064) == Approx(0.314));
    CHECK_FALSE(setback(0, 0.25, 0.064));
    CHECK_FALSE(setback(180, 0.25, 0.064));
    CHECK_FALSE(setback(90, -0.1, 0.064));
    CHECK_FALSE(setback(90, 0.1, 0));
    CHECK_FALSE(setback(std::nan(""), 0.1, 0.064));
}

TEST_CASE("The splice of AC 43.13-1B needs 37 rivets and has room for 40")
{
    // AC 43.13-1B CHG 1 para 4-58g(2): clad 2024, .032, 10 in wide, rivets of 1/8: 4.9 an inch,
    // three quarters of them; two rows at four diameters hold 40. The text rounds 3.675 to 3.7.
    CHECK(*rivetsOfSplice(4.9, 0.75, 10) == 37);
    CHECK(*rivetsThatFit(2, 10, 4 * 0.125) == 40);
    CHECK_FALSE(rivetsThatFit(2.5, 10, 0.5));
    CHECK(*rivetsThatFit(5000, 10, 0.5) == 100000);
    const auto sizes = rivetSizes(0.032);
    REQUIRE(sizes);
    CHECK(sizes->target == Approx(0.096));
    CHECK(sizes->size == "1/8");
    // NAVEDTRA 14018 chapter 13: never under 3/32 in structure.
    CHECK(sizes->least == 0.09375);
    CHECK(rivetSizes(0.125)->size.empty());
}

TEST_CASE("Rivets an inch are those of AC 43.13-1B table 4-11")
{
    struct Row {
        double sheet, diameter, perInch;
    };
    // Written out here from the table, corner by corner and where its rows change.
    constexpr Row rows[]{
        {.016, 3.0 / 32, 6.3}, {.016, 1.0 / 8, 4.7},   {.020, 5.0 / 32, 3.8}, {.025, 1.0 / 8, 4.7},
        {.032, 3.0 / 16, 3.2}, {.036, 3.0 / 32, 7.1},  {.036, 1.0 / 4, 2.4},  {.040, 3.0 / 32, 7.9},
        {.051, 1.0 / 8, 5.6},  {.064, 3.0 / 32, 12.7}, {.064, 5.0 / 32, 4.6}, {.081, 1.0 / 8, 8.9},
        {.081, 3.0 / 16, 4.0}, {.091, 1.0 / 4, 2.5},   {.102, 1.0 / 8, 11.2}, {.128, 5.0 / 32, 9.2},
        {.128, 3.0 / 16, 6.4}, {.128, 1.0 / 4, 3.5},
    };
    for (const auto &row : rows) {
        CAPTURE(row.sheet, row.diameter);
        const auto found = rivetsPerInch(row.sheet, row.diameter);
        REQUIRE(found);
        CHECK(found->per_inch == row.perInch);
        CHECK(found->source.document.find("Table 4-11") != std::string::npos);
    }
    // Between two sheets the thicker one's count is the greater.
    CHECK(rivetsPerInch(0.045, 1.0 / 8)->thickness == 0.051);
    CHECK_FALSE(rivetsPerInch(0.016, 1.0 / 4));
    CHECK_FALSE(rivetsPerInch(0.128, 3.0 / 32));
    CHECK_FALSE(rivetsPerInch(0.2, 1.0 / 8));
    CHECK_FALSE(rivetsPerInch(-1, 1.0 / 8));
}

TEST_CASE("A head of 1.35 diameters passes the military minimum and misses the usual target")
{
    const auto eighth = rivet(0.125, 0.1);
    REQUIRE(eighth);
    const auto passes = [&](std::string_view basis, double width, double height) {
        for (const auto &head : eighth->shop_heads) {
            if (head.basis == basis)
                return isWithin(head, width, height);
        }
        throw std::runtime_error("no such basis");
    };
    const double width = 1.35 * 0.125;
    CHECK(passes("mil_minimum", width, 0.06));
    CHECK_FALSE(passes("nominal_rule", width, 0.06));
    // MIL-R-47196A table III: at most .070 high for 1/8.
    CHECK_FALSE(passes("mil_minimum", width, 0.075));
    // The target itself, which the table rounds up to .188.
    CHECK(passes("nominal_rule", 1.5 * 0.125, 0.5 * 0.125));
    // Trade notes: 1.66 D is the widest.
    CHECK_FALSE(passes("trade_gauge", 0.25, 0.06));
}
