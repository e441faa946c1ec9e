// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A bulletin nobody looked into keeps the box open; one that does not apply, never")
{
    RuleBench bench(readiness::Rule::OpenBulletin);
    const auto bulletin = bench.bulletin(bench.rib, "2026-03-10");
    CHECK(bench.quiet(bulletin, "2026-03-09"));
    CHECK(bench.must(bulletin, "2026-03-10"));
    bench.change(bulletin, [](Bulletin &b) { b.applies = true; });
    CHECK(bench.should(bulletin, "2026-03-10"));
    bench.change(bulletin, [](Bulletin &b) { b.mandatory = true; });
    CHECK(bench.must(bulletin, "2026-03-10"));
    bench.change(bulletin, [](Bulletin &b) { b.complied_on = on("2026-03-12"); });
    CHECK(bench.must(bulletin, "2026-03-11"));
    CHECK(bench.quiet(bulletin, "2026-03-12"));
    bench.change(bulletin, [](Bulletin &b) {
        b.complied_on.reset();
        b.applies = false;
    });
    CHECK(bench.quiet(bulletin, "2026-03-10"));
}
