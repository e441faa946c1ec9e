// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("An inspector's signature without the sheet is advice; the builder needs no sheet")
{
    RuleBench bench(readiness::Rule::SignatureWithoutSheet);
    const auto own = bench.signedPoint(HoldPointKind::OwnCheck, SignerRole::Builder, "2026-03-10");
    const auto cover = bench.holdPoint(bench.box, HoldPointKind::PreCover, SignerRole::Inspector);
    const auto signOff = bench.signOff(cover, bench.builder, "2026-03-10");
    CHECK(bench.quiet(own, "2026-03-10"));
    CHECK(bench.quiet(cover, "2026-03-09"));
    CHECK(bench.should(cover, "2026-03-10"));
    const auto sheet = bench.photo("2026-03-10", {});
    bench.change(signOff, [&](SignOff &s) { s.scan_id = sheet; });
    CHECK(bench.quiet(cover, "2026-03-10"));
}

TEST_CASE("The sheet of a rejection is not asked for")
{
    RuleBench bench(readiness::Rule::SignatureWithoutSheet);
    const auto point = bench.holdPoint(bench.box, HoldPointKind::PreCover, SignerRole::Inspector);
    const auto signOff = bench.signOff(point, bench.builder, "2026-03-10");
    CHECK(bench.should(point, "2026-03-10"));
    bench.change(signOff, [](SignOff &s) { s.result = SignOffResult::Rejected; });
    CHECK(bench.quiet(point, "2026-03-10"));
}
