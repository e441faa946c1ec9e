// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A squawk keeps the box open from the day it is found until verified")
{
    RuleBench bench(readiness::Rule::OpenSquawk);
    const auto squawk = bench.squawk(bench.rib, "2026-03-10");
    bench.change(squawk, [&](Squawk &s) {
        s.correction = "Replaced";
        s.fixed_on = on("2026-03-12");
        s.verified_on = on("2026-03-14");
        s.verified_by = bench.builder;
        s.verify_by = SignerRole::Adviser;
    });
    CHECK(bench.quiet(squawk, "2026-03-09"));
    CHECK(bench.must(squawk, "2026-03-10"));
    CHECK_FALSE(bench.about(squawk, "2026-03-11")->waits_for);
    CHECK(bench.about(squawk, "2026-03-12")->waits_for == SignerRole::Adviser);
    CHECK(bench.quiet(squawk, "2026-03-14"));
}

TEST_CASE("Cosmetic squawks are advice")
{
    RuleBench bench(readiness::Rule::OpenSquawk);
    const auto squawk = bench.squawk(bench.rib, "2026-03-10");
    bench.change(squawk, [](Squawk &s) { s.severity = Severity::Cosmetic; });
    CHECK(bench.should(squawk, "2026-03-10"));
}

TEST_CASE("Access to a part means access to what is in it, from outside and from inside the box")
{
    RuleBench bench(readiness::Rule::OpenSquawk);
    const auto squawk = bench.squawk(bench.fuselage, "2026-03-10");
    CHECK(bench.quiet(squawk, "2026-03-10"));
    bench.change(squawk, [&](Squawk &s) { s.needs_access_to = {bench.rib}; });
    CHECK(bench.must(squawk, "2026-03-10"));
    bench.change(squawk, [&](Squawk &s) { s.needs_access_to = {bench.wing}; });
    CHECK(bench.must(squawk, "2026-03-10"));
    const auto outside = bench.squawk(bench.rib, "2026-03-10");
    bench.change(outside, [&](Squawk &s) { s.needs_access_to = {bench.fuselage}; });
    CHECK(bench.quiet(outside, "2026-03-10"));
}

TEST_CASE("A squawk that is accepted as it is keeps nothing open, from that day on")
{
    RuleBench bench(readiness::Rule::OpenSquawk);
    const auto squawk = bench.squawk(bench.rib, "2026-03-10");
    bench.change(squawk, [](Squawk &s) { s.accepted_on = on("2026-03-12"); });
    CHECK(bench.must(squawk, "2026-03-11"));
    CHECK(bench.quiet(squawk, "2026-03-12"));
}

TEST_CASE("A fixed squawk of which nobody said who looks at it waits for the builder")
{
    RuleBench bench(readiness::Rule::OpenSquawk);
    const auto squawk = bench.squawk(bench.rib, "2026-03-10");
    bench.change(squawk, [](Squawk &s) { s.fixed_on = on("2026-03-12"); });
    CHECK(bench.about(squawk, "2026-03-12")->waits_for == SignerRole::Builder);
    CHECK(bench.askBox("2026-03-12").state == readiness::State::ReadyToSign);
    bench.change(squawk, [](Squawk &s) { s.verify_by = SignerRole::Inspector; });
    CHECK(bench.askBox("2026-03-12").state == readiness::State::ReadyToInspect);
}
