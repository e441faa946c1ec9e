// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Sentences.h"
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("Work in the box after the signature outdates it; only heavy facts keep the box open")
{
    RuleBench bench(readiness::Rule::OutdatedSignOff);
    const auto point =
        bench.signedPoint(HoldPointKind::OwnCheck, SignerRole::Builder, "2026-03-10");
    const auto session = bench.session(bench.rib, "2026-03-11", 30);
    CHECK(bench.quiet(point, "2026-03-10"));
    CHECK(bench.should(point, "2026-03-11"));
    bench.change(session, [](WorkSession &s) { s.changed_inspected = true; });
    CHECK(bench.must(point, "2026-03-11"));
    bench.change(session, [](WorkSession &s) { s.changed_inspected = false; });
    CHECK(bench.quiet(point, "2026-03-11"));
}

TEST_CASE("On the day of the signature only a later time outdates it, by the end of the work")
{
    RuleBench bench(readiness::Rule::OutdatedSignOff);
    const auto point =
        bench.signedPoint(HoldPointKind::OwnCheck, SignerRole::Builder, "2026-03-10T12:00");
    const auto session = bench.session(bench.rib, "2026-03-10T11:30", 30);
    CHECK(bench.quiet(point, "2026-03-10"));
    bench.change(session, [](WorkSession &s) { s.minutes = Minutes{31}; });
    CHECK(bench.about(point, "2026-03-10")->facts.front().moment == on("2026-03-10T12:01"));
    bench.change(session, [](WorkSession &s) { s.began = on("2026-03-10"); });
    CHECK(bench.quiet(point, "2026-03-10"));
}

TEST_CASE("A deviation raised and built after the signature gives two facts")
{
    RuleBench bench(readiness::Rule::OutdatedSignOff);
    const auto point =
        bench.signedPoint(HoldPointKind::OwnCheck, SignerRole::Builder, "2026-03-10");
    const auto deviation = bench.deviation(bench.rib, "2026-03-12");
    bench.change(deviation, [](Deviation &d) { d.built_on = on("2026-03-12"); });
    CHECK(bench.about(point, "2026-03-12")->facts.size() == 2);
}

TEST_CASE("What outdates a signature is named, and whether saying that it changed nothing helps")
{
    RuleBench bench(readiness::Rule::OutdatedSignOff);
    const auto point =
        bench.signedPoint(HoldPointKind::OwnCheck, SignerRole::Builder, "2026-03-10");
    const auto sentence = [&] {
        return english(readiness::sentence(*bench.about(point, "2026-03-12"), bench.records));
    };
    const auto clearedBy = [&] {
        return english(
            readiness::clearedBy(*bench.about(point, "2026-03-12"), bench.records, bench.profile));
    };
    const auto session = bench.session(bench.rib, "2026-03-11", 30);
    CHECK(sentence() == "Own check: after the signature came work on 2026-03-11 in Rib");
    CHECK(clearedBy() ==
          "have it signed again, or say of each session whether it changed what was inspected");
    bench.change(session, [](WorkSession &s) { s.changed_inspected = true; });
    CHECK(clearedBy() == "have it signed again");
    const auto step = bench.step(bench.rib, "Deburr");
    bench.change(step, [](Step &s) { s.done_on = on("2026-03-12"); });
    bench.change(session, [](WorkSession &s) { s.changed_inspected.reset(); });
    CHECK(sentence() ==
          "Own check: after the signature came Deburr in Rib on 2026-03-12, and 1 more");
    CHECK(clearedBy() == "have it signed again");
}

TEST_CASE("What outdates a signature is the opening of a closing, and not the closing itself")
{
    RuleBench bench(readiness::Rule::OutdatedSignOff);
    const auto point =
        bench.signedPoint(HoldPointKind::OwnCheck, SignerRole::Builder, "2026-03-10");
    bench.change(bench.box, [](Closing &c) {
        c.title = "Skin of the panel";
        c.events = {{.closed_on = on("2026-03-11")}, {.opened_on = on("2026-03-12")}};
    });
    const auto blocker = bench.about(point, "2026-03-12");
    REQUIRE(blocker);
    CHECK(english(readiness::sentence(*blocker, bench.records)) ==
          "Own check: after the signature came the opening of “Skin of the panel” on 2026-03-12");
}

TEST_CASE("Tools are counted again after another signature on a later day")
{
    RuleBench bench(readiness::Rule::OutdatedSignOff);
    const auto tools =
        bench.signedPoint(HoldPointKind::ToolAndDebrisCheck, SignerRole::Builder, "2026-03-10");
    bench.signedPoint(HoldPointKind::PreCover, SignerRole::Inspector, "2026-03-10");
    CHECK(bench.quiet(tools, "2026-03-20"));
    bench.signedPoint(HoldPointKind::TechnicalVisit, SignerRole::Adviser, "2026-03-11");
    CHECK(bench.should(tools, "2026-03-20"));
}
