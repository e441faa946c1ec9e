// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("Photographs of the day of the last work are new enough, older ones are not")
{
    RuleBench bench(readiness::Rule::StalePhotos);
    bench.photo("2026-03-10T08:00", {{RecordType::Component, bench.rib.value()}});
    bench.session(bench.rib, "2026-03-10T19:00", 60);
    CHECK(bench.quiet(bench.box, "2026-03-10"));
    const auto late = bench.session(bench.rib, "2026-03-11T23:30", 60);
    CHECK(bench.quiet(bench.box, "2026-03-11"));
    CHECK(bench.should(bench.box, "2026-03-12"));
    bench.change(late, [](WorkSession &s) { s.kind = WorkKind::Inspection; });
    CHECK(bench.quiet(bench.box, "2026-03-12"));
}
