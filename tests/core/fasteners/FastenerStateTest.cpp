// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fasteners/FastenerState.h"

#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::fasteners;
using test::on;

TEST_CASE("A bolt goes from the bag to its seal, each day as it stood then")
{
    Fastener bolt;
    bolt.torque_min = 50;
    bolt.torque_max = 70;
    bolt.torque_drag = 6;
    bolt.locking = Locking::SplitPin;
    bolt.fitted_on = on("2026-03-02");
    bolt.torqued_on = on("2026-03-04");
    bolt.torque_value = 70;
    bolt.locked_on = on("2026-03-06");
    bolt.marked_on = on("2026-03-08");
    const auto state = [&](std::string_view day) { return stateOf(bolt, on(day)); };
    CHECK(state("2026-03-01") == FastenerState::ToFit);
    CHECK(state("2026-03-02") == FastenerState::FingerTight);
    CHECK(state("2026-03-04") == FastenerState::ToLock);
    CHECK(state("2026-03-06") == FastenerState::ToSeal);
    CHECK(state("2026-03-08") == FastenerState::Done);
    bolt.torque_value = 77;
    CHECK(state("2026-03-08") == FastenerState::OutOfLimits);
    bolt.torque_value = 76;
    CHECK(state("2026-03-08") == FastenerState::Done);
    bolt.torque_value = 55;
    CHECK(state("2026-03-08") == FastenerState::OutOfLimits);
    bolt.accepted_on = on("2026-03-09");
    CHECK(state("2026-03-09") == FastenerState::Done);
    bolt.removed_on = on("2026-03-10");
    CHECK(state("2026-03-10") == FastenerState::Removed);
    // Without a limit nobody says that it is loose.
    Fastener pin;
    pin.fitted_on = on("2026-03-02");
    CHECK(stateOf(pin, on("2026-03-04")) == FastenerState::Done);
}

TEST_CASE("What the wrench shows is outside when it is so less the drag")
{
    Fastener bolt;
    CHECK_FALSE(isOutside(bolt, 500));
    bolt.torque_min = 50;
    bolt.torque_max = 70;
    bolt.torque_drag = 6;
    CHECK_FALSE(isOutside(bolt, 56));
    CHECK_FALSE(isOutside(bolt, 76));
    CHECK(isOutside(bolt, 55));
    CHECK(isOutside(bolt, 77));
}

TEST_CASE("On the wrench the drag is added to the limits")
{
    Fastener bolt;
    bolt.torque_min = 50;
    bolt.torque_drag = 6;
    CHECK(limitsOnWrench(bolt) == std::pair(std::optional(56.0), std::optional<double>()));
    bolt.torque_max = 70;
    bolt.torque_drag.reset();
    CHECK(limitsOnWrench(bolt) == std::pair(std::optional(50.0), std::optional(70.0)));
}

TEST_CASE("What is finger-tight is what the readiness answer calls loose, the oldest first")
{
    test::RuleBench bench(readiness::Rule::LooseFastener);
    const auto add = [&](std::string_view place, std::string_view fitted) {
        Fastener bolt;
        bolt.component_id = bench.rib;
        bolt.place = place;
        bolt.torque_max = 70;
        bolt.fitted_on = on(fitted);
        return bench.add(bolt);
    };
    const auto second = add("Horn", "2026-03-05");
    const auto first = add("Hinge", "2026-03-02");
    const auto withdrawn = add("Wrong", "2026-03-01");
    bench.withdraw(withdrawn);
    const auto removed = add("Gone", "2026-03-01");
    bench.change(removed, [](Fastener &bolt) { bolt.removed_on = on("2026-03-03"); });
    const auto loose = fingerTight(bench.records, on("2026-03-10"));
    REQUIRE(loose.size() == 2);
    CHECK(loose[0]->id == first);
    CHECK(loose[1]->id == second);
    for (const Fastener *bolt : loose)
        CHECK(bench.must(bolt->id, "2026-03-10"));
    CHECK(bench.quiet(removed, "2026-03-10"));
    CHECK(fingerTight(bench.records, on("2026-03-04")).size() == 1);
}
