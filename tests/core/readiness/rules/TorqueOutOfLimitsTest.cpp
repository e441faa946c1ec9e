// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

Id<Fastener> torqued(RuleBench &bench, double value, double drag)
{
    Fastener f;
    f.component_id = bench.rib;
    f.place = "Spar root";
    f.torque_min = 50;
    f.torque_max = 70;
    f.torque_drag = drag;
    f.torque_value = value;
    f.fitted_on = on("2026-03-09");
    f.torqued_on = on("2026-03-10");
    return bench.add(f);
}

} // namespace

TEST_CASE("The drag of the nut is taken off before the torque is held against its limits")
{
    RuleBench bench(readiness::Rule::TorqueOutOfLimits);
    CHECK(bench.must(torqued(bench, 54, 5), "2026-03-10"));
    CHECK(bench.quiet(torqued(bench, 55, 5), "2026-03-10"));
    CHECK(bench.quiet(torqued(bench, 75, 5), "2026-03-10"));
    CHECK(bench.must(torqued(bench, 76, 5), "2026-03-10"));
    CHECK(bench.quiet(torqued(bench, 76, 5), "2026-03-09"));
}

TEST_CASE("Decimals meet a limit exactly")
{
    RuleBench bench(readiness::Rule::TorqueOutOfLimits);
    CHECK(bench.quiet(torqued(bench, 55.3, 5.3), "2026-03-10"));
    CHECK(bench.quiet(torqued(bench, 70.1, 0.1), "2026-03-10"));
    CHECK(bench.must(torqued(bench, 70.11, 0.1), "2026-03-10"));
}
