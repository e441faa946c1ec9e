// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Names.h"
#include "core/readiness/Sentences.h"
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A hold point waits for its signer until accepted or waived")
{
    RuleBench bench(readiness::Rule::UnsignedHoldPoint);
    const auto point = bench.holdPoint(bench.box, HoldPointKind::PreCover, SignerRole::Inspector);
    CHECK(bench.must(point, "2026-03-09"));
    CHECK(bench.about(point, "2026-03-09")->waits_for == SignerRole::Inspector);
    bench.signOff(point, bench.builder, "2026-03-10");
    CHECK(bench.must(point, "2026-03-09"));
    CHECK(bench.quiet(point, "2026-03-10"));
    const auto optional =
        bench.holdPoint(bench.box, HoldPointKind::TechnicalVisit, SignerRole::Adviser);
    bench.change(optional, [](HoldPoint &p) { p.required = false; });
    CHECK(bench.should(optional, "2026-03-10"));
    bench.change(optional, [&](HoldPoint &p) {
        p.waived_on = on("2026-03-12");
        p.waived_by = bench.builder;
        p.waived_why = "Seen at the last visit";
    });
    CHECK(bench.should(optional, "2026-03-11"));
    CHECK(bench.quiet(optional, "2026-03-12"));
}

TEST_CASE("A rejection waits for the signer only once its findings are entered")
{
    RuleBench bench(readiness::Rule::UnsignedHoldPoint);
    Inspection visit;
    visit.kind = InspectionKind::PreCover;
    const auto inspection = bench.add(visit);
    const auto point = bench.holdPoint(bench.box, HoldPointKind::PreCover, SignerRole::Inspector);
    const auto signOff = bench.signOff(point, bench.builder, "2026-03-10");
    bench.change(signOff, [&](SignOff &s) {
        s.result = SignOffResult::Rejected;
        s.inspection_id = inspection;
    });
    CHECK(bench.must(point, "2026-03-10"));
    CHECK_FALSE(bench.about(point, "2026-03-10")->waits_for);
    const auto squawk = bench.squawk(bench.rib, "2026-03-10");
    bench.change(squawk, [&](Squawk &s) { s.inspection_id = inspection; });
    CHECK(bench.about(point, "2026-03-10")->waits_for == SignerRole::Inspector);
    CHECK(english(readiness::sentence(*bench.about(point, "2026-03-09"), bench.records)) ==
          "Pre-cover inspection is not signed");
    CHECK(english(readiness::sentence(*bench.about(point, "2026-03-10"), bench.records)) ==
          "Pre-cover inspection was rejected, and is not signed since");
    CHECK(english(readiness::clearedBy(*bench.about(point, "2026-03-10"), bench.records,
                                       bench.profile)) ==
          "correct what was found, and have it signed again");
}

TEST_CASE("What is signed after the closing does not count for it, which is said as it is")
{
    RuleBench bench(readiness::Rule::UnsignedHoldPoint);
    const auto point = bench.holdPoint(bench.box, HoldPointKind::PreCover, SignerRole::Inspector);
    bench.change(bench.box, [&](Closing &closing) {
        closing.events.push_back({.closed_on = on("2026-03-10"), .by = bench.builder});
    });
    const auto said = [&](std::string_view asOf) {
        return english(readiness::sentence(*bench.about(point, asOf), bench.records));
    };
    CHECK(said("2026-03-12") == "Pre-cover inspection is not signed");
    bench.signOff(point, bench.builder, "2026-03-12");
    CHECK(said("2026-03-11") == "Pre-cover inspection is not signed");
    CHECK(bench.must(point, "2026-03-12"));
    CHECK(said("2026-03-12") ==
          "Pre-cover inspection was not signed before the closing, only after it");
    CHECK(english(readiness::clearedBy(*bench.about(point, "2026-03-12"), bench.records,
                                       bench.profile)) ==
          "have the builder, the adviser or the inspector accept it late, or open it again");
    CHECK(bench.askBox("2026-03-12").state == readiness::State::ClosedEarly);
}

TEST_CASE("A hold point is named as the inspection that it is")
{
    Records records;
    records.hold_points.put({.id = Id<HoldPoint>{1}, .kind = HoldPointKind::Final});
    records.hold_points.put({.id = Id<HoldPoint>{2}, .kind = HoldPointKind::Stage});
    CHECK(english(readiness::named(records, {RecordType::HoldPoint, 1})) == "final inspection");
    CHECK(english(readiness::named(records, {RecordType::HoldPoint, 2})) == "stage inspection");
}

TEST_CASE("The latest word counts: a later rejection ends a yes, and a yes with findings is one")
{
    RuleBench bench(readiness::Rule::UnsignedHoldPoint);
    const auto point = bench.holdPoint(bench.box, HoldPointKind::PreCover, SignerRole::Inspector);
    bench.signOff(point, bench.builder, "2026-03-10");
    const auto second = bench.signOff(point, bench.builder, "2026-03-12");
    bench.change(second, [](SignOff &s) { s.result = SignOffResult::Rejected; });
    CHECK(bench.quiet(point, "2026-03-11"));
    REQUIRE(bench.must(point, "2026-03-12"));
    // It names no inspection under which findings could stand.
    const auto blocker = *bench.about(point, "2026-03-12");
    CHECK_FALSE(blocker.waits_for);
    CHECK(bench.askBox("2026-03-12").state == readiness::State::Hold);
    CHECK(english(readiness::sentence(blocker, bench.records)) ==
          "Pre-cover inspection was rejected, and its findings are not entered");
    CHECK(english(readiness::clearedBy(blocker, bench.records, bench.profile)) ==
          "enter the findings of the rejection as squawks of that inspection");
    bench.change(second, [](SignOff &s) { s.result = SignOffResult::AcceptedWithFindings; });
    CHECK(bench.quiet(point, "2026-03-12"));
}

TEST_CASE("A hold point says where it comes from: by itself, else as the profile cites its rule")
{
    RuleBench bench(readiness::Rule::UnsignedHoldPoint);
    bench.profile.sources = {{"shed-rules", "Rules of the shed", "2025", Mark::Read, "", ""}};
    bench.profile.hold_points = {{.kind = HoldPointKind::PreCover,
                                  .signer_role = SignerRole::Inspector,
                                  .source = "shed-rules",
                                  .mark = Mark::SecondHand}};
    const auto point = bench.holdPoint(bench.box, HoldPointKind::PreCover, SignerRole::Inspector);
    const auto cited = [&] {
        return readiness::source(bench.about(point, "2026-03-10").value(), bench.records,
                                 bench.profile);
    };
    CHECK(cited() == "Rules of the shed, 2025 [second-hand]");
    bench.change(point, [](HoldPoint &p) { p.source = "Our inspector's letter"; });
    CHECK(cited() == "Our inspector's letter");
    bench.change(point, [](HoldPoint &p) { p.source = "shed-rules"; });
    CHECK(cited() == "Rules of the shed, 2025");
    bench.change(point, [](HoldPoint &p) {
        p.source.clear();
        p.signer_role = SignerRole::Adviser;
    });
    CHECK(cited().empty());
}
