// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>
#include <vector>

using namespace lastrivet;
using namespace lastrivet::test;
using readiness::Gap;
using readiness::Rule;
using readiness::State;
using readiness::ToComplete;
using readiness::Weight;

// What holds of a lid, of a factory's closing and of the aircraft as a whole.
namespace {

constexpr auto day = "2026-03-20";

template <class Record> RecordRef refOf(Id<Record> id)
{
    return {Record::type, id.value()};
}

/// A box with a must blocker of several rules, and advice.
struct Busy : RuleBench {
    Id<Squawk> open;

    Busy()
        : RuleBench(Rule::OpenSquawk)
        , open(squawk(rib, "2026-03-01"))
    {
        step(rib, "Deburr");
        fastener(rib, "Root");
        measurement(rib, "Gap");
        partLine(rib, "Bracket", 1);
        holdPoint(box, HoldPointKind::PreCover, SignerRole::Inspector);
    }
};

/// It stands at another part than the box, which is therefore within it.
Id<Closing> aircraftOf(RuleBench &bench)
{
    return bench.add(Closing{
        .component_id = bench.fuselage, .title = "Finished", .scope = ClosingScope::Aircraft});
}

std::set<Rule> mustsOf(const RuleBench &bench, Id<Closing> closing)
{
    std::set<Rule> rules;
    const auto answer = bench.ask(day);
    for (const auto &blocker : answer.closing(closing)->blockers) {
        if (blocker.weight == Weight::Must)
            rules.insert(blocker.rule);
    }
    return rules;
}

} // namespace

TEST_CASE("Of a lid that can be opened again every blocker is advice, and it is clear or closed")
{
    Busy bench;
    const auto before = bench.askBox(day);
    CHECK(before.state == State::Hold);
    CHECK(mustsOf(bench, bench.box) == std::set{Rule::FastenerNotFitted, Rule::MeasurementMissing,
                                                Rule::MissingPart, Rule::OpenSquawk,
                                                Rule::UndoneStep, Rule::UnsignedHoldPoint});
    bench.change(bench.box, [](Closing &closing) { closing.permanent = false; });
    CHECK(mustsOf(bench, bench.box).empty());
    CHECK(bench.askBox(day).state == State::Clear);
    CHECK(bench.should(bench.open, day));
    bench.change(bench.box,
                 [](Closing &closing) { closing.events = {{.closed_on = on("2026-03-10")}}; });
    CHECK(bench.askBox(day).state == State::Closed);
}

TEST_CASE("Nothing stands against a factory's closing, and what is open in it is out of reach")
{
    Busy bench;
    bench.change(bench.box, [](Closing &closing) { closing.made_by = MadeBy::Factory; });
    CHECK(bench.askBox(day).blockers.empty());
    CHECK(bench.askBox(day).state == State::Clear);
    CHECK(bench.ask(day).out_of_reach.empty());
    bench.change(bench.box,
                 [](Closing &closing) { closing.events = {{.closed_on = on("2026-03-10")}}; });
    CHECK(bench.askBox(day).state == State::Closed);
    const auto buried = bench.ask(day).out_of_reach;
    const auto isBuried = [&](RecordRef record) {
        return std::any_of(buried.begin(), buried.end(), [&](const auto &row) {
            return row.record == record && row.closings == IdSet<Closing>{bench.box};
        });
    };
    CHECK(isBuried(refOf(bench.open)));
    CHECK(isBuried(refOf(bench.records.steps.begin()->id)));
    CHECK(isBuried(refOf(bench.records.fasteners.begin()->id)));
    // What was never measured or delivered, and a signature, cannot be buried.
    CHECK(buried.size() == 3);
}

TEST_CASE("What may follow a factory's closing is its last chance as long as it is open")
{
    RuleBench bench(Rule::UndoneStep);
    bench.change(bench.box, [](Closing &closing) { closing.made_by = MadeBy::Factory; });
    const auto test = bench.followingStep();
    CHECK(bench.ask(day).last_chance ==
          std::vector<readiness::LastChance>{{bench.box, {refOf(test)}}});
    bench.change(bench.box,
                 [](Closing &closing) { closing.events = {{.closed_on = on("2026-03-10")}}; });
    CHECK(bench.ask(day).last_chance.empty());
}

TEST_CASE("The closing of the whole aircraft reaches every part, and the papers that name none")
{
    RuleBench bench(Rule::OpenSquawk);
    const auto whole = aircraftOf(bench);
    const auto answer = bench.ask(day);
    CHECK(answer.closing(whole)->reach ==
          IdSet<Component>{bench.wing, bench.panel, bench.rib, bench.fuselage});
    CHECK(mustsOf(bench, whole) == std::set{Rule::InnerClosingOpen});
    bench.squawk({}, "2026-03-01");
    bench.change(bench.deviation(bench.rib, "2026-03-01"),
                 [](Deviation &paper) { paper.component_ids.clear(); });
    bench.change(bench.bulletin(bench.rib, "2026-03-01"),
                 [](Bulletin &paper) { paper.component_ids.clear(); });
    CHECK(mustsOf(bench, whole) == std::set{Rule::InnerClosingOpen, Rule::OpenBulletin,
                                            Rule::OpenSquawk, Rule::UndecidedDeviation});
    CHECK(mustsOf(bench, bench.box).empty());
}

TEST_CASE("What the records lack is told in the order of what it is, and only while it is so")
{
    RuleBench bench(Rule::OpenSquawk);
    const auto gaps = [&] { return bench.ask(day).to_complete; };
    CHECK(gaps().empty());
    const auto deviation = bench.deviation(bench.rib, "2026-03-01");
    const auto bulletin = bench.bulletin(bench.rib, "2026-03-01");
    CHECK(gaps().empty());
    bench.change(deviation, [](Deviation &paper) { paper.component_ids.clear(); });
    bench.change(bulletin, [](Bulletin &paper) { paper.component_ids.clear(); });
    bench.change(bench.box, [](Closing &closing) { closing.made_by = MadeBy::Factory; });
    const ToComplete factory{Gap::FactoryClosingWithoutDocument, refOf(bench.box)};
    const ToComplete ofDeviation{Gap::RecordWithoutPlace, refOf(deviation)};
    const ToComplete ofBulletin{Gap::RecordWithoutPlace, refOf(bulletin)};
    CHECK(gaps() == std::vector{factory, ofDeviation, ofBulletin});
    bench.change(deviation, [](Deviation &paper) {
        paper.decided_on = on("2026-03-10");
        paper.decision = Decision::Approved;
    });
    CHECK(gaps() == std::vector{factory, ofBulletin});
    bench.change(bulletin, [](Bulletin &paper) { paper.complied_on = on("2026-03-10"); });
    CHECK(gaps() == std::vector{factory});
    const auto paper = bench.photo("2026-03-10", {{RecordType::Closing, bench.box.value()}});
    CHECK(gaps() == std::vector{factory});
    bench.change(paper, [](Media &media) { media.kind = MediaKind::Document; });
    CHECK(gaps().empty());
}

TEST_CASE("Each kind of part that is closed as a rule is asked for its closing, and no other")
{
    const std::set<ComponentKind> structures{
        ComponentKind::ControlSurface, ComponentKind::LiftingSurface,
        ComponentKind::FuselageSection, ComponentKind::FuelTank};
    for (std::size_t i = 0; i < Words<ComponentKind>::list.size(); ++i) {
        RuleBench bench(Rule::OpenSquawk);
        bench.change(bench.fuselage, [&](Component &part) { part.kind = ComponentKind(i); });
        const ToComplete gap{Gap::PartWithoutClosing, refOf(bench.fuselage)};
        const auto gaps = bench.ask(day).to_complete;
        INFO(Words<ComponentKind>::list[i]);
        CHECK((std::find(gaps.begin(), gaps.end(), gap) != gaps.end()) ==
              structures.contains(ComponentKind(i)));
    }
}
