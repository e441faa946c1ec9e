// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace lastrivet;
using namespace lastrivet::test;
using readiness::Rule;
using readiness::State;

namespace {

constexpr auto day = "2026-03-20";

std::int64_t times(const RuleBench &bench, Id<Closing> closing, Rule rule)
{
    const auto answer = bench.ask(day);
    const auto &blockers = answer.closing(closing)->blockers;
    return std::count_if(blockers.begin(), blockers.end(),
                         [rule](const auto &blocker) { return blocker.rule == rule; });
}

} // namespace

TEST_CASE("A box at the same part is beside, and one that can be opened again is no box within")
{
    RuleBench bench(Rule::InnerClosingOpen);
    const auto outer = bench.closing(bench.panel);
    const auto other = bench.closing(bench.panel, {bench.rib});
    CHECK(times(bench, outer, Rule::InnerClosingOpen) == 0);
    CHECK(bench.must(other, day));
    bench.change(other, [](Closing &closing) { closing.permanent = false; });
    CHECK(bench.quiet(other, day));
}

TEST_CASE("An open box waits for whom it must wait for, whoever else might come")
{
    RuleBench bench(Rule::InnerClosingOpen);
    const auto inner = bench.closing(bench.panel, {bench.rib});
    bench.holdPoint(inner, HoldPointKind::TechnicalVisit, SignerRole::Adviser);
    const auto visit = bench.holdPoint(inner, HoldPointKind::Stage, SignerRole::Inspector);
    bench.change(visit, [](HoldPoint &point) { point.required = false; });
    CHECK(bench.about(inner, day)->waits_for == SignerRole::Adviser);
}

TEST_CASE("A closing that waits for an inspector and the builder is ready to inspect")
{
    RuleBench bench(Rule::UnsignedHoldPoint);
    bench.holdPoint(bench.box, HoldPointKind::PreCover, SignerRole::Inspector);
    bench.holdPoint(bench.box, HoldPointKind::OwnCheck, SignerRole::Builder);
    CHECK(bench.askBox(day).state == State::ReadyToInspect);
}

TEST_CASE("What lies in several places of the reach, or above it, stands in the way once")
{
    RuleBench bench(Rule::OpenSquawk);
    const auto deviation = bench.deviation(bench.rib, "2026-03-01");
    bench.change(deviation, [&](Deviation &d) { d.component_ids = {bench.panel, bench.rib}; });
    CHECK(times(bench, bench.box, Rule::UndecidedDeviation) == 1);
    const auto squawk = bench.squawk(bench.fuselage, "2026-03-01");
    bench.change(squawk, [&](Squawk &s) { s.needs_access_to = {bench.panel, bench.rib}; });
    CHECK(times(bench, bench.box, Rule::OpenSquawk) == 1);
    const auto deep = bench.closing(bench.rib);
    bench.change(deviation, [&](Deviation &d) { d.component_ids = {bench.wing, bench.panel}; });
    CHECK(times(bench, deep, Rule::FiledAbove) == 1);
}

TEST_CASE("Above a part and inside by another is inside, and cosmetic squawks are not told above")
{
    RuleBench bench(Rule::FiledAbove);
    bench.change(bench.box, [&](Closing &c) { c.encloses = {bench.panel, bench.rib}; });
    CHECK(bench.quiet(bench.squawk(bench.panel, "2026-03-01"), day));
    const auto squawk = bench.squawk(bench.wing, "2026-03-01");
    CHECK(bench.should(squawk, day));
    bench.change(squawk, [](Squawk &s) { s.severity = Severity::Cosmetic; });
    CHECK(bench.quiet(squawk, day));
}

TEST_CASE("Any lot of a use that had expired counts")
{
    RuleBench bench(Rule::ExpiredMaterial);
    const auto good = bench.lot("Resin");
    const auto old = bench.lot("Hardener");
    bench.change(old, [](MaterialLot &lot) { lot.expires_on = on("2026-03-01"); });
    const auto use = bench.materialUse(bench.rib, good, "2026-03-10");
    CHECK(bench.quiet(use, day));
    bench.change(use, [&](MaterialUse &u) { u.lot_ids = {good, old}; });
    CHECK(bench.must(use, day));
}

TEST_CASE("When the latest measurement may follow the closing, an earlier one is not taken for it")
{
    RuleBench bench(Rule::MeasurementOutOfLimits);
    const auto measured = [&](std::string_view moment) {
        Measurement gap;
        gap.component_id = bench.rib;
        gap.what = "Hinge gap";
        gap.maximum = 1;
        gap.value = 2;
        gap.measured_on = on(moment);
        return bench.add(gap);
    };
    const auto first = measured("2026-03-01");
    const auto last = measured("2026-03-05");
    CHECK(bench.must(last, day));
    bench.change(last, [&](Measurement &m) { m.may_follow = {bench.box}; });
    CHECK(bench.quiet(last, day));
    CHECK(bench.quiet(first, day));
}

TEST_CASE(
    "Of measurements of one day, timed and not, the greatest id that no other is after counts")
{
    RuleBench bench(Rule::MeasurementOutOfLimits);
    const auto measured = [&](std::string_view moment) {
        Measurement gap;
        gap.component_id = bench.rib;
        gap.what = "Hinge gap";
        gap.maximum = 1;
        gap.value = 2;
        gap.measured_on = on(moment);
        return bench.add(gap);
    };
    const auto late = measured("2026-03-05T15:00");
    const auto undated = measured("2026-03-05");
    const auto early = measured("2026-03-05T09:00");
    CHECK(bench.quiet(late, day));
    CHECK(bench.must(undated, day));
    CHECK(bench.quiet(early, day));
}

TEST_CASE("Of two calibrations of one day the later in the list counts, and none of later")
{
    RuleBench bench(Rule::UncalibratedTool);
    Tool wrench;
    wrench.name = "Torque wrench";
    wrench.needs_calibration = true;
    wrench.calibrations = {{on("2026-03-01"), on("2027-03-01"), {}},
                           {on("2026-03-01"), on("2026-03-05"), {}}};
    const auto tool = bench.add(wrench);
    const auto bolt = bench.fastener(bench.rib, "Spar root");
    bench.change(bolt, [&](Fastener &f) {
        f.fitted_on = f.torqued_on = on("2026-03-10");
        f.tool_id = tool;
    });
    CHECK(bench.should(bolt, day));
    bench.change(tool, [](Tool &t) { std::swap(t.calibrations[0], t.calibrations[1]); });
    CHECK(bench.quiet(bolt, day));
    // A day ties with its times: what was calibrated in the afternoon is not known at noon.
    bench.change(tool, [](Tool &t) {
        t.calibrations = {{on("2026-03-10T15:00"), on("2027-03-10"), {}}};
    });
    CHECK(bench.should(bolt, "2026-03-10T12:00"));
    CHECK(bench.quiet(bolt, "2026-03-10T16:00"));
}

TEST_CASE("A part in one that was taken back stands by itself")
{
    RuleBench bench(Rule::OpenSquawk);
    const auto squawk = bench.squawk(bench.rib, "2026-03-01");
    CHECK(bench.must(squawk, day));
    bench.withdraw(bench.panel);
    CHECK(bench.quiet(squawk, day));
    CHECK(bench.askBox(day).reach.empty());
    const auto own = bench.closing(bench.rib);
    CHECK(bench.ask(day).closing(own)->reach == IdSet<Component>{bench.rib});
}

TEST_CASE("Blockers of one rule and one id stand in the order of their records' names")
{
    RuleBench bench(Rule::FiledAbove);
    const auto squawk = bench.squawk(bench.wing, "2026-03-01");
    const Id<Deviation> id{squawk.value()};
    bench.add(Deviation{
        .id = id, .number = "1", .component_ids = {bench.wing}, .raised_on = on("2026-03-01")});
    std::vector<RecordType> types;
    for (const auto &blocker : bench.askBox(day).blockers) {
        if (blocker.rule == Rule::FiledAbove)
            types.push_back(blocker.record.type);
    }
    CHECK(types == std::vector{RecordType::Deviation, RecordType::Squawk});
}
