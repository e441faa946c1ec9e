// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;
using readiness::Rule;
using readiness::State;

namespace {

constexpr auto planned = "2026-04-01";
constexpr auto before = "2026-03-20";

/// A bolt that was fitted, torqued and left unmarked on the 10th and taken out on the 15th.
Id<Fastener> removedBolt(RuleBench &bench)
{
    Fastener bolt;
    bolt.component_id = bench.rib;
    bolt.place = "Spar root";
    bolt.torque_max = 50;
    bolt.torque_value = 60;
    bolt.locking = Locking::SplitPin;
    bolt.fitted_on = bolt.torqued_on = on("2026-03-10");
    bolt.removed_on = on("2026-03-15");
    bolt.removed_why = "Wrong grip";
    return bench.add(bolt);
}

} // namespace

TEST_CASE("What happened to a record makes it there before its plan")
{
    RuleBench bench(Rule::FastenerNotFitted);
    const auto bolt = bench.fastener(bench.rib, "Spar root");
    bench.change(bolt, [](Fastener &f) { f.planned_on = on(planned); });
    CHECK(bench.quiet(bolt, before));
    bench.change(bolt, [](Fastener &f) { f.torqued_on = on("2026-03-10"); });
    CHECK(bench.must(bolt, before));
    const auto step = bench.step(bench.rib, "Deburr");
    bench.change(step, [](Step &s) {
        s.planned_on = on(planned);
        s.dropped_on = on("2026-03-10");
    });
    const auto gap = bench.measurement(bench.rib, "Hinge gap");
    bench.change(gap, [](Measurement &m) {
        m.planned_on = on(planned);
        m.measured_on = on("2026-03-10");
    });
    Check check;
    check.closing_id = bench.box;
    check.planned_on = on(planned);
    check.done_on = on("2026-03-10");
    bench.add(check);
    check.done_on.reset();
    bench.add(check);
    const auto there = [&](std::string_view day) { return bench.askBox(day).on_record; };
    CHECK(there("2026-03-09").steps == 0);
    CHECK(there(before).steps == 1);
    CHECK(there("2026-03-09").measurements == 0);
    CHECK(there(before).measurements == 1);
    CHECK(there("2026-03-09").checks == 0);
    CHECK(there(before).checks == 1);
    CHECK(there(planned).checks == 2);
}

TEST_CASE("A line that was ordered before its plan is missing already")
{
    RuleBench bench(Rule::MissingPart);
    const auto line = bench.partLine(bench.rib, "Bracket", 4);
    bench.change(line, [](PartLine &l) { l.planned_on = on(planned); });
    CHECK(bench.quiet(line, before));
    bench.change(line, [](PartLine &l) { l.ordered_on = on("2026-03-10"); });
    CHECK(bench.must(line, before));
}

TEST_CASE("A check that is planned for later is not unticked yet")
{
    RuleBench bench(Rule::UntickedCheck);
    Check check;
    check.closing_id = bench.box;
    check.planned_on = on(planned);
    const auto id = bench.add(check);
    CHECK(bench.quiet(id, before));
    CHECK(bench.should(id, planned));
    bench.change(id, [](Check &c) { c.not_applicable = true; });
    CHECK(bench.quiet(id, planned));
}

TEST_CASE("A hold point that is planned for later, or waived, asks for nothing")
{
    const auto rule = GENERATE(Rule::OutdatedSignOff, Rule::SignatureWithoutSheet);
    RuleBench bench(rule);
    const auto point =
        bench.signedPoint(HoldPointKind::PreCover, SignerRole::Inspector, "2026-03-10");
    bench.session(bench.rib, "2026-03-11", 30);
    CHECK(bench.should(point, before));
    bench.change(point, [](HoldPoint &p) { p.planned_on = on(planned); });
    CHECK(bench.quiet(point, before));
    bench.change(point, [](HoldPoint &p) {
        p.planned_on.reset();
        p.waived_on = on("2026-03-15");
    });
    CHECK(bench.should(point, "2026-03-14"));
    CHECK(bench.quiet(point, before));
}

TEST_CASE("A hold point that is planned for later need not be signed yet")
{
    RuleBench bench(Rule::UnsignedHoldPoint);
    const auto point = bench.holdPoint(bench.box, HoldPointKind::OwnCheck, SignerRole::Builder);
    bench.change(point, [](HoldPoint &p) { p.planned_on = on(planned); });
    CHECK(bench.quiet(point, before));
    CHECK(bench.must(point, planned));
}

TEST_CASE("A bolt that was taken out again is neither loose nor wrong")
{
    const auto rule = GENERATE(Rule::TorqueOutOfLimits, Rule::UnlockedFastener,
                               Rule::UnmarkedFastener, Rule::UncalibratedTool);
    RuleBench bench(rule);
    Tool wrench;
    wrench.name = "Torque wrench";
    wrench.needs_calibration = true;
    const auto tool = bench.add(wrench);
    const auto bolt = removedBolt(bench);
    bench.change(bolt, [&](Fastener &f) { f.tool_id = tool; });
    CHECK_FALSE(bench.quiet(bolt, "2026-03-14"));
    CHECK(bench.quiet(bolt, "2026-03-15"));
}

TEST_CASE("A bolt with an upper limit only is loose until it is torqued or taken out")
{
    RuleBench bench(Rule::LooseFastener);
    const auto bolt = removedBolt(bench);
    bench.change(bolt, [](Fastener &f) { f.torqued_on.reset(); });
    CHECK(bench.must(bolt, "2026-03-14"));
    CHECK(bench.quiet(bolt, "2026-03-15"));
}

TEST_CASE("What is accepted counts from the day it was accepted")
{
    RuleBench torque(Rule::TorqueOutOfLimits);
    const auto bolt = removedBolt(torque);
    torque.change(bolt, [](Fastener &f) {
        f.removed_on.reset();
        f.accepted_on = on("2026-03-12");
    });
    CHECK(torque.must(bolt, "2026-03-11"));
    CHECK(torque.quiet(bolt, "2026-03-12"));
    RuleBench sample(Rule::FailedSample);
    const auto use = sample.materialUse(sample.rib, sample.lot("Glue"), "2026-03-01");
    sample.change(use, [](MaterialUse &u) {
        u.sample = Sample::Failed;
        u.sample_on = on("2026-03-02");
        u.accepted_on = on("2026-03-12");
    });
    CHECK(sample.must(use, "2026-03-11"));
    CHECK(sample.quiet(use, "2026-03-12"));
    RuleBench limits(Rule::MeasurementOutOfLimits);
    const auto gap = limits.measurement(limits.rib, "Hinge gap");
    limits.change(gap, [](Measurement &m) {
        m.maximum = 1;
        m.value = 2;
        m.measured_on = on("2026-03-10");
        m.accepted_on = on("2026-03-12");
    });
    CHECK(limits.must(gap, "2026-03-11"));
    CHECK(limits.quiet(gap, "2026-03-12"));
}

TEST_CASE("A box within a closed one is judged at the closing, and nothing of later is known")
{
    RuleBench bench(Rule::InnerClosedEarly);
    const auto inner = bench.closing(bench.panel, {bench.rib});
    const auto close = [&](Id<Closing> id, std::string_view moment) {
        bench.change(id, [&](Closing &closing) {
            closing.events = {{on(moment), {}, {}, "Skin on", false}};
        });
    };
    close(bench.box, "2026-03-10");
    close(inner, "2026-03-10T15:00");
    CHECK(bench.askBox("2026-03-10T10:00").state == State::ClosedEarly);
    CHECK(bench.askBox("2026-03-10T15:00").state == State::Closed);
    // Closed with a gap, and opened again only after the outer one was closed over it.
    bench.squawk(bench.rib, "2026-03-01");
    close(inner, "2026-03-05");
    bench.change(inner, [](Closing &closing) {
        closing.events.push_back({{}, on("2026-03-15"), {}, {}, false});
    });
    CHECK(bench.must(inner, before));
}

TEST_CASE("Of a late acceptance its word and its time count")
{
    RuleBench bench(Rule::OpenSquawk);
    bench.squawk(bench.rib, "2026-03-01");
    SignOff late;
    late.person_id = bench.builder;
    late.signed_on = on("2026-03-15");
    const auto acceptance = bench.add(late);
    bench.change(bench.box, [&](Closing &closing) {
        closing.events = {{on("2026-03-10"), {}, {}, "Skin on", false}};
        closing.late_acceptances = {acceptance};
    });
    const auto state = [&] { return bench.askBox(before).state; };
    CHECK(state() == State::Closed);
    bench.change(acceptance, [](SignOff &s) { s.result = SignOffResult::Rejected; });
    CHECK(state() == State::ClosedEarly);
    bench.change(acceptance, [](SignOff &s) {
        s.result = SignOffResult::Accepted;
        s.signed_on = on("2026-03-09");
    });
    CHECK(state() == State::ClosedEarly);
}
