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

TEST_CASE("Without any photograph none is too old: that there are too few is told by another rule")
{
    RuleBench bench(readiness::Rule::StalePhotos);
    bench.session(bench.rib, "2026-03-11", 60);
    CHECK(bench.quiet(bench.box, "2026-03-20"));
    bench.photo("2026-03-10", {{RecordType::Component, bench.rib.value()}});
    CHECK(bench.should(bench.box, "2026-03-20"));
}

TEST_CASE("A newer photograph that shows the inside makes up for an older one, one of outside not")
{
    RuleBench bench(readiness::Rule::StalePhotos);
    const Media::Link onRib{RecordType::Component, bench.rib.value()};
    bench.photo("2026-03-10", {onRib});
    bench.session(bench.rib, "2026-03-11", 60);
    const auto newer = bench.photo("2026-03-12", {onRib});
    CHECK(bench.quiet(bench.box, "2026-03-20"));
    bench.change(newer, [](Media &m) { m.shows = {Shows::Exterior}; });
    CHECK(bench.should(bench.box, "2026-03-20"));
}
