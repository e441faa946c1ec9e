// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workshop/Quantities.h"

#include "core/workshop/OwnLimits.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

using namespace lastrivet;
using namespace lastrivet::workshop;

TEST_CASE("Numbers of the workshop are read with their units, whatever units are shown")
{
    using enum Quantity;
    const auto imperial = UnitSystem::Imperial;
    const auto metric = UnitSystem::Metric;
    CHECK(*inTableUnits("1/8", Length, imperial) == 0.125);
    CHECK(*inTableUnits("1-1/4 in", Length, metric) == 1.25);
    CHECK(*inTableUnits("25.4", Length, metric) == Approx(1));
    CHECK(*inTableUnits("0,254 m", Length, imperial) == Approx(10));
    CHECK(*inTableUnits("1.5 ft", Length, metric) == 18);
    CHECK(*inTableUnits("3,18 mm", Length, imperial) == Approx(3.18 / 25.4));
    CHECK(*inTableUnits("0,125", Length, imperial) == 0.125);
    // As the program itself writes it, with a no-break space.
    CHECK(*inTableUnits("20\xC2\xA0in-lb", Torque, metric) == 20);
    CHECK_FALSE(inTableUnits("1,850 in-lb", Torque, imperial));
    CHECK(*inTableUnits("-2", Length, imperial) == -2);
    // NIST SP 811: 1 lbf·in = 0.112 984 8 N·m; 1 lbf = 4.448 222 N; 1 ft = 0.3048 m.
    CHECK(*inTableUnits("0.1129848 N·m", Torque, imperial) == Approx(1).epsilon(1e-6));
    CHECK(*inTableUnits("5 Nm", Torque, imperial) == Approx(44.2537));
    CHECK(*inTableUnits("2 ft-lb", Torque, metric) == 24);
    CHECK(*inTableUnits("4.448222", Force, metric) == Approx(1).epsilon(1e-6));
    CHECK(*inTableUnits("3.048 m", Run, imperial) == Approx(10));
    CHECK(inUnits(1, Torque, metric) == Approx(0.1129848).epsilon(1e-6));
    CHECK(inUnits(1, Force, metric) == Approx(4.448222).epsilon(1e-6));
}

TEST_CASE("A whole number before a fraction is no part of it, with a dash between or a space")
{
    using enum Quantity;
    const auto read = [](std::string_view text) {
        return inTableUnits(text, Length, UnitSystem::Imperial);
    };
    CHECK(*read("1 1/2") == 1.5);
    CHECK(*read("1-1/2") == 1.5);
    CHECK(*read("2  3/4 in") == 2.75);
    CHECK(*read("1 - 1/4") == 1.25);
    CHECK(*read(" 3/32 in") == 3.0 / 32);
    CHECK(*read("7 / 8 in") == 0.875);
    CHECK(*read("11/2") == 5.5);
    CHECK_FALSE(read("1\xC2\xA0"
                     "1/2"));
}

TEST_CASE("A space between figures parts thousands, and nothing else")
{
    using enum Quantity;
    const auto read = [](std::string_view text) {
        return inTableUnits(text, Number, UnitSystem::Imperial);
    };
    CHECK(*read("12 250") == 12250);
    CHECK(*read("1 012 250.5") == 1012250.5);
    CHECK(*read(" 84 ") == 84);
    CHECK(*read("- 84") == -84);
    CHECK_FALSE(read("84 5"));
    CHECK_FALSE(read("12 2500"));
    CHECK_FALSE(read("0 50"));
    CHECK_FALSE(read("1500 250"));
    CHECK_FALSE(read("1.5 250"));
    CHECK_FALSE(read("12,5 250"));
}

TEST_CASE("A torque is read however its unit is put")
{
    using enum Quantity;
    for (const auto *text :
         {"20 in-lb", "20 in lb", "20 in-lbs", "20 in lbs", "20 lb-in", "20 LB IN"})
        CHECK(*inTableUnits(text, Torque, UnitSystem::Metric) == 20);
    for (const auto *text : {"2 ft-lb", "2 ft lbs", "2 lb-ft", "2 Ft-Lbs"})
        CHECK(*inTableUnits(text, Torque, UnitSystem::Metric) == 24);
    // As it is read behind a fastener.
    for (const auto *text : {"20 lbs in", "20 in·lb", "20 in.-lb", "20 lbf in"})
        CHECK(*inTableUnits(text, Torque, UnitSystem::Metric) == 20);
    for (const auto *text : {"5 N.m", "5 N m", "5 N·m", "5 nm", "5. Nm", "5 N*m", "5 N\u22C5m"})
        CHECK(*inTableUnits(text, Torque, UnitSystem::Imperial) == Approx(44.2537));
    CHECK_FALSE(inTableUnits("5 Ncm", Torque, UnitSystem::Imperial));
    CHECK(*inTableUnits("38 lbs", Force, UnitSystem::Metric) == 38);
}

TEST_CASE("A unit of something else, or no number, is refused in one sentence")
{
    using enum Quantity;
    const auto why = [](std::string_view text, Quantity quantity) {
        const auto read = inTableUnits(text, quantity, UnitSystem::Imperial);
        return read ? std::string() : english(read.reason());
    };
    CHECK(why("5 mm", Torque).find("no torque") != std::string::npos);
    CHECK(why("20 in-lb", Length).find("no length") != std::string::npos);
    CHECK(why("3 stone", Force).find("no force") != std::string::npos);
    CHECK(why("", Length).find("no length") != std::string::npos);
    CHECK(why("an eighth", Length).find("no length") != std::string::npos);
    CHECK(why("12 V", Number).find("no number") != std::string::npos);
    CHECK(why("1e400", Number).find("no number") != std::string::npos);
}

TEST_CASE("What is written in one unit and shown in the other comes back the same")
{
    for (const auto quantity : {Quantity::Length, Quantity::Run, Quantity::Torque, Quantity::Force})
        for (const double value : {0.0625, 1.0, 17.5, 1234.0}) {
            const double shown = inUnits(value, quantity, UnitSystem::Metric);
            CHECK(*inTableUnits(fmt::format("{:.6f}", shown), quantity, UnitSystem::Metric) ==
                  Approx(value).epsilon(1e-4));
        }
}

TEST_CASE("A project's own limits come back as they were kept, and damaged ones count as none")
{
    std::vector<OwnLimit> limits;
    setOwnLimit(limits, {torqueSubject("1/4-28", "tension"), 45, 55, "in-lb", "Drawing 12-3"});
    setOwnLimit(limits, {"edge distance", 0.3, {}, "in", "Letter of the designer"});
    setOwnLimit(limits, {torqueSubject("1/4-28", "tension"), 46, 56, "in-lb", "Drawing 12-3 B"});
    const auto back = ownLimits(ownLimitsText(limits));
    CHECK(back == limits);
    REQUIRE(back.size() == 2);
    CHECK(ownLimit(back, "torque 1/4-28 tension")->minimum == 46);
    CHECK_FALSE(ownLimit(back, "torque 1/4-28 shear"));
    dropOwnLimit(limits, "edge distance");
    CHECK(limits.size() == 1);
    CHECK(ownLimits("").empty());
    CHECK(ownLimits("[{\"subject\": 5}, 7, {\"subject\": \"x\", \"minimum\": 1}]").empty());
    CHECK(ownLimits("{").empty());
}
