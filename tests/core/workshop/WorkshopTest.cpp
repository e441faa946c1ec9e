// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workshop/Inches.h"
#include "core/workshop/Rivet.h"
#include "core/workshop/Torque.h"
#include "core/workshop/Wrench.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace lastrivet;
using namespace lastrivet::workshop;

namespace {

/// A row of AC 43.13-1B (9/8/98) table 7-1: tension nut, shear nut, maxima. Written out here from
/// the table, not read from the file under test.
struct TableRow {
    std::string_view thread;
    double tensionMin, tensionMax, shearMin, shearMax, mostTension, mostShear;
};

constexpr TableRow table71[]{
    {"8-36", 12, 15, 7, 9, 20, 12},
    {"10-32", 20, 25, 12, 15, 40, 25},
    {"1/4-28", 50, 70, 30, 40, 100, 60},
    {"5/16-24", 100, 140, 60, 85, 225, 140},
    {"3/8-24", 160, 190, 95, 110, 390, 240},
    {"7/16-20", 450, 500, 270, 300, 840, 500},
    {"1/2-20", 480, 690, 290, 410, 1100, 660},
    {"9/16-18", 800, 1000, 480, 600, 1600, 960},
    {"5/8-18", 1100, 1300, 600, 780, 2400, 1400},
    {"3/4-16", 2300, 2500, 1300, 1500, 5000, 3000},
    {"7/8-14", 2500, 3000, 1500, 1800, 7000, 4200},
    {"1-14", 3700, 5500, 2200, 3300, 10000, 6000},
    {"1-1/8-12", 5000, 7000, 3000, 4200, 15000, 9000},
    {"1-1/4-12", 9000, 11000, 5400, 6600, 25000, 15000},
    {"8-32", 12, 15, 7, 9, 20, 12},
    // A copy of the table in an Army manual misprints 12 for the last and 150 for the first of
    // 3/8-16.
    {"10-24", 20, 25, 12, 15, 35, 21},
    {"1/4-20", 40, 50, 25, 30, 75, 45},
    {"5/16-18", 80, 90, 48, 55, 160, 100},
    {"3/8-16", 160, 185, 95, 100, 275, 170},
    {"7/16-14", 235, 255, 140, 155, 475, 280},
    {"1/2-13", 400, 480, 240, 290, 880, 520},
    {"9/16-12", 500, 700, 300, 420, 1100, 650},
    {"5/8-11", 700, 900, 420, 540, 1500, 900},
    {"3/4-10", 1150, 1600, 700, 950, 2500, 1500},
    {"7/8-9", 2200, 3000, 1300, 1800, 4600, 2700},
};

const ShopHead &headBy(const Rivet &rivet, std::string_view basis)
{
    const auto found = std::find_if(rivet.shop_heads.begin(), rivet.shop_heads.end(),
                                    [&](const ShopHead &head) { return head.basis == basis; });
    REQUIRE(found != rivet.shop_heads.end());
    return *found;
}

const Spacing &spacingBy(const std::vector<Spacing> &spacings, std::string_view rule,
                         std::string_view holdsFor)
{
    const auto found = std::find_if(spacings.begin(), spacings.end(), [&](const Spacing &spacing) {
        return spacing.rule == rule && spacing.holds_for == holdsFor;
    });
    REQUIRE(found != spacings.end());
    return *found;
}

} // namespace

TEST_CASE("Lengths are read as the trade writes them")
{
    CHECK(inches("1/8") == 0.125);
    CHECK(inches("1-1/4") == 1.25);
    CHECK(inches(".064") == 0.064);
    CHECK(inches("0.5") == 0.5);
    for (const auto *wrong : {"", "-1", "1/0", "1//2", "x", "1/8 in", "nan", "inf", "1e3", "2000",
                              "500/0.25", "1000-1/2", "50-70"})
        CHECK_FALSE(inches(wrong));
}

TEST_CASE("Every row of AC 43.13-1B table 7-1 is given, for both kinds of nut")
{
    REQUIRE(threads().size() == std::size(table71));
    for (const auto &row : table71) {
        CAPTURE(std::string(row.thread));
        const auto tension = torque(row.thread, Nut::Tension, 0);
        REQUIRE(tension);
        CHECK(tension->minimum == row.tensionMin);
        CHECK(tension->maximum == row.tensionMax);
        CHECK(tension->allowed_maximum == row.mostTension);
        const auto shear = torque(row.thread, Nut::Shear, 0);
        REQUIRE(shear);
        CHECK(shear->minimum == row.shearMin);
        CHECK(shear->maximum == row.shearMax);
        CHECK(shear->allowed_maximum == row.mostShear);
        CHECK(shear->source.document.starts_with("AC 43.13-1B"));
        CHECK(shear->source.verified == "read in two places");
    }
    CHECK(torque("1-14", Nut::Shear, 0)->remark.find("estimated") != std::string::npos);
}

TEST_CASE("The drag of the nut is added to all three values")
{
    const auto found = torque("#10-32", Nut::Tension, 4.5);
    REQUIRE(found);
    CHECK(found->thread == "10-32");
    CHECK(found->minimum == 24.5);
    CHECK(found->maximum == 29.5);
    CHECK(found->allowed_maximum == 44.5);
    CHECK(found->drag_added == 4.5);
}

TEST_CASE("Threads that the table has not, and drags that cannot be, get one sentence")
{
    CHECK(english(torque("1/4-27", Nut::Shear, 0).reason()).find("no thread 1/4-27") !=
          std::string::npos);
    CHECK(english(torque("10-32", Nut::Shear, 16).reason()).find("more than the 15") !=
          std::string::npos);
    CHECK_FALSE(torque("10-32", Nut::Shear, -1));
    CHECK_FALSE(torque("10-32", Nut::Shear, std::nan("")));
}

TEST_CASE("Sources that disagree on the drag of a self-locking nut stand side by side")
{
    const auto found = prevailingTorque("7/16-20");
    REQUIRE(found.size() == 3);
    // AC table 7-2, reused nuts: 8; military breakaway table: 14; ground equipment: 12.
    CHECK(found[0].minimum == 8);
    CHECK(found[1].minimum == 14);
    CHECK(found[2].minimum == 12);
    CHECK(prevailingTorque("10-32").size() == 1);
}

TEST_CASE("A wrench with an extension is set as the published examples say")
{
    // TM 1-1500-204-23-9 para 8: 300 in-lb, lever 10, extension 4: 214. AC 43.13-1B fig. 7-2's
    // numbers: 135, 10, 1.5: 117. TM 9-254 fig. 45: set to 60, lever 12, extension 2: 70 at the
    // nut.
    CHECK(std::floor(*wrenchSetting(300, 10, 4)) == 214);
    CHECK(std::floor(*wrenchSetting(135, 10, 1.5)) == 117);
    CHECK(*appliedTorque(60, 12, 2) == Approx(70));
    CHECK(*wrenchSetting(100, 10, 0) == 100);
    CHECK(*wrenchSetting(100, 10, -2) == 125);
    CHECK(*appliedTorque(*wrenchSetting(77, 9, 3), 9, 3) == Approx(77));
    CHECK_FALSE(wrenchSetting(1e300, 1e300, 1));
    CHECK_FALSE(appliedTorque(1e308, 1, 10));
    CHECK_FALSE(wrenchSetting(100, 10, -10));
    CHECK_FALSE(wrenchSetting(100, 0, 4));
    CHECK_FALSE(wrenchSetting(-1, 10, 4));
    CHECK_FALSE(wrenchSetting(1e300, 1e300, 1));
    CHECK_FALSE(appliedTorque(1e300, 1, 1e300));
}

TEST_CASE("A rivet is as long as its grip and one and a half diameters, up to the next sixteenth")
{
    // FAA-H-8083-31 chapter 4: L = G + 1.5 D.
    CHECK(rivet(0.125, 0.19)->length_code == 7);
    CHECK(rivet(0.125, 0.19)->length == 0.4375);
    CHECK(rivet(0.125, 0.25)->length_code == 7);
    CHECK(rivet(0.125, 0.2501)->length_code == 8);
    CHECK(rivet(0.09375, 0.064)->length_code == 4);
    // A worked splice of two sheets of 0.032 by an eighth rivet: 0.064 + 0.1875, next is 5/16.
    CHECK(rivet(0.125, 0.064)->length_code == 5);
    CHECK(english(rivet(0.2, 0.1).reason()).find("1/16, 3/32, 1/8") != std::string::npos);
    CHECK_FALSE(rivet(0.125, 0));
    CHECK_FALSE(rivet(0.125, std::nan("")));
}

TEST_CASE("A shop head is judged by three rules that differ, each named")
{
    const auto eighth = rivet(0.125, 0.1);
    REQUIRE(eighth);
    // FAA-H-8083-31: 1.5 D wide, 0.5 D high. MIL-R-47196A table III: .163 wide, .050 to .070 high.
    CHECK(*headBy(*eighth, "nominal_rule").diameter_min == Approx(1.5 * 0.125).margin(0.001));
    CHECK(headBy(*eighth, "mil_minimum").diameter_min == 0.163);
    CHECK(headBy(*eighth, "mil_minimum").height_min == 0.05);
    CHECK(headBy(*eighth, "mil_minimum").height_max == 0.07);
    // Of larger rivets the military minimum is known from memory only, and marked so.
    CHECK(headBy(*rivet(0.1875, 0.1), "mil_minimum").source.isFromMemory());
    CHECK_FALSE(headBy(*eighth, "mil_minimum").source.isFromMemory());
}

TEST_CASE("Edge distances and pitches come with each source's rule")
{
    // AC 43.13-1B para 4-57c: edge two diameters, one row pitched three. FAA-H-8083-31: at most
    // four diameters; flush two and a half.
    const auto edges = edgeDistances(0.125);
    CHECK(spacingBy(edges, "edge_distance_min", "protruding").distance == 0.25);
    CHECK(spacingBy(edges, "edge_distance_min", "flush/countersunk").distance == 0.3125);
    CHECK(spacingBy(edges, "edge_distance_max", "any").distance == 0.5);
    const auto rows = pitches(0.125);
    CHECK(spacingBy(rows, "pitch_min", "1 row, protruding").distance == 0.375);
    // The AC's splice: forty rivets of an eighth in two rows over ten inches, half an inch apart.
    CHECK(spacingBy(rows, "pitch_min", "2 rows, protruding").distance == 0.5);
    CHECK(spacingBy(rows, "pitch_max_navy", "any").distance == 1.0);
    CHECK(spacingBy(rows, "pitch_max_trade", "any").distance == 1.25);
    // The military edge margin of 0.156 in holds for 3/32 alone.
    const auto small = edgeDistances(0.09375);
    CHECK(small.size() == edges.size() + 1);
}

TEST_CASE("Every number of every table says where it is from and how far it was checked")
{
    REQUIRE(WorkshopTable::names().size() >= 20);
    for (const auto &name : WorkshopTable::names()) {
        const auto &table = WorkshopTable::named(name);
        CAPTURE(name);
        REQUIRE(table.rowCount() > 0);
        for (std::size_t row = 0; row < table.rowCount(); ++row) {
            CHECK_FALSE(table.source(row).document.empty());
            const auto &verified = table.source(row).verified;
            CHECK((verified.find("read in ") != std::string::npos || verified == "computed" ||
                   verified == "second hand" || verified == "from memory"));
        }
    }
}
