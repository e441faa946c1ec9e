// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Readiness.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

namespace lastrivet::readiness {

namespace {

using test::on;

/// A wing with a closing, of which nothing is recorded yet, and a tail beside it.
struct Bench : test::ProjectBuilder {
    Id<Component> wing = part("Left wing");
    Id<Component> tail = part("Tail");
    Id<Closing> skin = closing(wing);

    bool isBegunOn(std::string_view day) const
    {
        return readiness(records, profile, on(day)).closing(skin)->begun;
    }
    /// What is recorded for 2026-03-10 begins the closing on that day, not before.
    bool begins() const { return !isBegunOn("2026-03-09") && isBegunOn("2026-03-10"); }
};

} // namespace

TEST_CASE("A closing whose reach has only plans is not begun")
{
    Bench bench;
    bench.step(bench.wing, "Rivet the ribs");
    bench.fastener(bench.wing, "Spar bolt");
    bench.measurement(bench.wing, "gap");
    bench.deviation(bench.wing, "2026-03-10");
    bench.holdPoint(bench.skin, HoldPointKind::OwnCheck, SignerRole::Builder);
    bench.squawk(bench.tail, "2026-03-10");
    CHECK_FALSE(bench.isBegunOn("2026-03-14"));
}

TEST_CASE("A squawk found inside, or to be fixed from inside, begins a closing")
{
    Bench inside;
    inside.squawk(inside.wing, "2026-03-10");
    CHECK(inside.begins());
    Bench reached;
    const auto squawk = reached.squawk(reached.tail, "2026-03-10");
    reached.change(squawk, [&](Squawk &found) { found.needs_access_to = {reached.wing}; });
    CHECK(reached.begins());
}

TEST_CASE("What was measured, torqued or built otherwise inside begins a closing")
{
    Bench measured;
    const auto gap = measured.measurement(measured.wing, "gap");
    measured.change(gap, [](Measurement &found) {
        found.value = 1.5;
        found.measured_on = on("2026-03-10");
    });
    CHECK(measured.begins());
    Bench torqued;
    const auto bolt = torqued.fastener(torqued.wing, "Spar bolt");
    torqued.change(bolt, [](Fastener &fastener) {
        fastener.torque_value = 100;
        fastener.torqued_on = on("2026-03-10");
    });
    CHECK(torqued.begins());
    Bench built;
    const auto deviation = built.deviation(built.wing, "2026-03-01");
    built.change(deviation, [](Deviation &longer) { longer.built_on = on("2026-03-10"); });
    CHECK(built.begins());
}

TEST_CASE("A hold point that was signed or waived begins its closing")
{
    Bench signedFor;
    const auto point =
        signedFor.holdPoint(signedFor.skin, HoldPointKind::OwnCheck, SignerRole::Builder);
    signedFor.signOff(point, signedFor.builder, "2026-03-10");
    CHECK(signedFor.begins());
    Bench waived;
    const auto other = waived.holdPoint(waived.skin, HoldPointKind::OwnCheck, SignerRole::Builder);
    waived.change(other, [](HoldPoint &left) { left.waived_on = on("2026-03-10"); });
    CHECK(waived.begins());
}

} // namespace lastrivet::readiness
