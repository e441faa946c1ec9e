// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace lastrivet;
using namespace lastrivet::test;
using readiness::Rule;

namespace {

constexpr auto later = "2026-03-20";

/// A box with a signature of 2026-03-10, and a box within it.
struct Signed : RuleBench {
    Id<HoldPoint> point;
    Id<Closing> inner;

    explicit Signed(HoldPointKind kind = HoldPointKind::OwnCheck)
        : RuleBench(Rule::OutdatedSignOff)
        , point(signedPoint(kind, SignerRole::Builder, "2026-03-10"))
        , inner(closing(panel, {rib}))
    {
    }

    Id<Step> closingStep(Id<Closing> closing)
    {
        const auto id = step(rib, "Rivet it on");
        change(id, [&](Step &s) { s.closes = closing; });
        return id;
    }
    Id<WorkSession> workOn(Id<Step> step)
    {
        const auto id = session(rib, "2026-03-12", 30);
        change(id, [&](WorkSession &s) { s.step_id = step; });
        return id;
    }
    std::size_t facts() const
    {
        const auto blocker = about(point, later);
        return blocker ? blocker->facts.size() : 0;
    }
};

} // namespace

TEST_CASE("Closing the box, or a box within, outdates no signature while its step stands")
{
    Signed bench;
    const auto step = bench.closingStep(GENERATE(true, false) ? bench.box : bench.inner);
    const auto use = bench.materialUse(bench.rib, bench.lot("Sealant"), "2026-03-12");
    bench.change(use, [&](MaterialUse &u) { u.step_id = step; });
    bench.change(step, [](Step &s) { s.done_on = on("2026-03-12"); });
    bench.workOn(step);
    CHECK(bench.facts() == 0);
    // Of a step that was taken back the work and the sealant remain.
    bench.withdraw(step);
    CHECK(bench.facts() == 2);
}

TEST_CASE("A use is excused by its step only while that stands")
{
    RuleBench bench(Rule::CuringMaterial);
    const auto step = bench.step(bench.rib, "Rivet it on");
    bench.change(step, [&](Step &s) { s.closes = bench.box; });
    const auto use = bench.materialUse(bench.rib, bench.lot("Sealant"), "2026-03-20");
    bench.change(use, [&](MaterialUse &u) {
        u.step_id = step;
        u.cure_minutes = Minutes{90};
    });
    CHECK(bench.quiet(use, later));
    bench.withdraw(step);
    CHECK(bench.must(use, later));
}

TEST_CASE("What the inspector asked for outdates no signature, while the squawk stands")
{
    Signed bench(HoldPointKind::ToolAndDebrisCheck);
    Inspection visit;
    const auto inspection = bench.add(visit);
    bench.change(bench.records.sign_offs.begin()->id,
                 [&](SignOff &s) { s.inspection_id = inspection; });
    const auto squawk = bench.squawk(bench.rib, "2026-03-11");
    bench.change(squawk, [&](Squawk &s) {
        s.inspection_id = inspection;
        s.fixed_on = on("2026-03-12");
    });
    const auto work = bench.session(bench.rib, "2026-03-12", 30);
    bench.change(work, [&](WorkSession &s) { s.squawk_id = squawk; });
    CHECK(bench.facts() == 0);
    // On a step that closes the box as well.
    bench.change(work, [&](WorkSession &s) { s.step_id = bench.closingStep(bench.box); });
    CHECK(bench.facts() == 0);
    bench.withdraw(squawk);
    CHECK(bench.facts() == 1);
}

TEST_CASE("Squawks that were there before outdate a signature when they are fixed, if they matter")
{
    Signed bench;
    const auto squawk = bench.squawk(bench.rib, "2026-03-01");
    CHECK(bench.facts() == 0);
    bench.change(squawk, [](Squawk &s) { s.fixed_on = on("2026-03-12"); });
    CHECK(bench.must(bench.point, later));
    bench.change(squawk, [](Squawk &s) { s.severity = Severity::Cosmetic; });
    CHECK(bench.facts() == 0);
}

TEST_CASE("A deviation taken out again and a bulletin complied with outdate a signature")
{
    Signed bench;
    const auto deviation = bench.deviation(bench.rib, "2026-03-01");
    const auto bulletin = bench.bulletin(bench.rib, "2026-03-01");
    CHECK(bench.facts() == 0);
    bench.change(deviation, [](Deviation &d) { d.undone_on = on("2026-03-12"); });
    CHECK(bench.facts() == 1);
    bench.change(bulletin, [](Bulletin &b) { b.complied_on = on("2026-03-12"); });
    CHECK(bench.facts() == 2);
    bench.bulletin(bench.rib, "2026-03-12");
    CHECK(bench.facts() == 2);
}

TEST_CASE("A bolt taken out outdates a signature, unless it may follow the closing")
{
    Signed bench;
    const auto bolt = bench.fastener(bench.rib, "Spar root");
    bench.change(bolt, [](Fastener &f) {
        f.fitted_on = on("2026-03-01");
        f.removed_on = on("2026-03-12");
    });
    CHECK(bench.must(bench.point, later));
    bench.change(bolt, [&](Fastener &f) { f.may_follow = {bench.box}; });
    CHECK(bench.facts() == 0);
}

TEST_CASE("Tools need not be counted again for what came later on the same day")
{
    RuleBench bench(Rule::OutdatedSignOff);
    const auto tools = bench.signedPoint(HoldPointKind::ToolAndDebrisCheck, SignerRole::Builder,
                                         "2026-03-10T10:00");
    bench.signedPoint(HoldPointKind::OwnCheck, SignerRole::Builder, "2026-03-10T15:00");
    CHECK(bench.quiet(tools, later));
}

TEST_CASE("A rejection waits for nobody when its only finding was taken back")
{
    RuleBench bench(Rule::UnsignedHoldPoint);
    const auto inspection = bench.add(Inspection{});
    const auto point =
        bench.signedPoint(HoldPointKind::PreCover, SignerRole::Inspector, "2026-03-10");
    bench.change(bench.records.sign_offs.begin()->id, [&](SignOff &s) {
        s.result = SignOffResult::Rejected;
        s.inspection_id = inspection;
    });
    const auto squawk = bench.squawk(bench.rib, "2026-03-10");
    bench.change(squawk, [&](Squawk &s) { s.inspection_id = inspection; });
    CHECK(bench.about(point, later)->waits_for == SignerRole::Inspector);
    bench.withdraw(squawk);
    CHECK_FALSE(bench.about(point, later)->waits_for);
}

TEST_CASE("A step that closes a box within is not undone for the box around it")
{
    RuleBench bench(Rule::UndoneStep);
    const auto inner = bench.closing(bench.panel, {bench.rib});
    const auto step = bench.step(bench.rib, "Rivet it on");
    CHECK(bench.must(step, later));
    bench.change(step, [&](Step &s) { s.closes = inner; });
    CHECK(bench.quiet(step, later));
}

TEST_CASE("A step before the closing step counts once, and not before that is planned")
{
    RuleBench bench(Rule::UndoneStep);
    const auto jig = bench.step(bench.fuselage, "Make the jig");
    const auto deburr = bench.step(bench.rib, "Deburr");
    const auto close = bench.step(bench.wing, "Rivet it on", {jig, deburr});
    bench.change(close, [&](Step &s) {
        s.closes = bench.box;
        s.planned_on = on("2026-04-01");
    });
    CHECK(bench.quiet(jig, later));
    CHECK(bench.must(jig, "2026-04-01"));
    const auto blockers = bench.askBox("2026-04-01").blockers;
    CHECK(std::count_if(blockers.begin(), blockers.end(), [&](const auto &blocker) {
              return blocker.rule == Rule::UndoneStep;
          }) == 2);
    bench.change(close, [](Step &s) { s.dropped_on = on("2026-04-02"); });
    CHECK(bench.quiet(jig, "2026-04-02"));
}
