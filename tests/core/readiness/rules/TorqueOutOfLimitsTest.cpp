// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Sentences.h"
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

#include <string>

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

std::string saidOf(const RuleBench &bench, Id<Fastener> fastener)
{
    const auto blocker = bench.about(fastener, "2026-03-10");
    REQUIRE(blocker);
    return english(readiness::sentence(*blocker, bench.records));
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

TEST_CASE("A torque less its drag is within a limit that it meets in decimals, whatever binary "
          "rounding does")
{
    RuleBench bench(readiness::Rule::TorqueOutOfLimits);
    CHECK(bench.quiet(torqued(bench, 55.3, 5.3), "2026-03-10"));
    CHECK(bench.quiet(torqued(bench, 70.1, 0.1), "2026-03-10"));
    CHECK(bench.must(torqued(bench, 70.11, 0.1), "2026-03-10"));
}

TEST_CASE("A torque outside its limits is told with its figures")
{
    using Catch::EndsWith;
    RuleBench bench(readiness::Rule::TorqueOutOfLimits);
    CHECK_THAT(saidOf(bench, torqued(bench, 76, 5.3)),
               EndsWith(": the torque is 70.7 in-lb (76 less a drag of 5.3), outside its limits "
                        "(50 to 70 in-lb)"));
    CHECK_THAT(saidOf(bench, torqued(bench, 48.25, 0)),
               EndsWith(": the torque is 48.25 in-lb, outside its limits (50 to 70 in-lb)"));
    const auto open = torqued(bench, 40, 0);
    bench.change(open, [](Fastener &f) { f.torque_max.reset(); });
    CHECK_THAT(saidOf(bench, open),
               EndsWith(": the torque is 40 in-lb, outside its limits (at least 50 in-lb)"));
}
