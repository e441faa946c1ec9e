// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <catch2/catch.hpp>

#include <functional>
#include <string>
#include <vector>

using namespace lastrivet;
using namespace lastrivet::test;
using readiness::Fact;
using readiness::Rule;

// What outdates a signature, one happening after the other, as the rule lists them; the
// expectations are read off that list.
namespace {

using Place = Id<Component>;
using Day = std::string_view;

constexpr auto before = "2026-03-01";
constexpr auto signedOn = "2026-03-10";
constexpr auto later = "2026-03-12";
constexpr auto asked = "2026-03-20";

/// Something that happens in a place on a day, to a record that was there long before.
struct Happening {
    std::string name;
    std::function<RecordRef(RuleBench &, Place, Day)> make;
};

template <class Record> RecordRef refOf(Id<Record> id)
{
    return {Record::type, id.value()};
}

/// A record made by `make`, changed by `change`.
template <class Record, class Change>
RecordRef changed(RuleBench &bench, Id<Record> id, Change change)
{
    bench.change(id, change);
    return refOf(id);
}

std::vector<Happening> workDone()
{
    return {
        {"work that changed what was inspected",
         [](RuleBench &bench, Place place, Day day) {
             return changed(bench, bench.session(place, day, 30),
                            [](WorkSession &s) { s.changed_inspected = true; });
         }},
        {"a step done",
         [](RuleBench &bench, Place place, Day day) {
             return changed(bench, bench.step(place, "Deburr"),
                            [&](Step &s) { s.done_on = on(day); });
         }},
        {"a material used",
         [](RuleBench &bench, Place place, Day day) {
             return refOf(bench.materialUse(place, bench.lot("Primer"), day));
         }},
        {"a fastener fitted",
         [](RuleBench &bench, Place place, Day day) {
             return changed(bench, bench.fastener(place, "Root"),
                            [&](Fastener &f) { f.fitted_on = on(day); });
         }},
        {"a fastener torqued",
         [](RuleBench &bench, Place place, Day day) {
             return changed(bench, bench.fastener(place, "Root"),
                            [&](Fastener &f) { f.torqued_on = on(day); });
         }},
        {"a fastener removed",
         [](RuleBench &bench, Place place, Day day) {
             return changed(bench, bench.fastener(place, "Root"),
                            [&](Fastener &f) { f.removed_on = on(day); });
         }},
    };
}

std::vector<Happening> papersWritten()
{
    return {
        {"a squawk found",
         [](RuleBench &bench, Place place, Day day) { return refOf(bench.squawk(place, day)); }},
        {"a squawk fixed",
         [](RuleBench &bench, Place place, Day day) {
             return changed(bench, bench.squawk(place, before),
                            [&](Squawk &s) { s.fixed_on = on(day); });
         }},
        {"a deviation raised",
         [](RuleBench &bench, Place place, Day day) { return refOf(bench.deviation(place, day)); }},
        {"a deviation built",
         [](RuleBench &bench, Place place, Day day) {
             return changed(bench, bench.deviation(place, before),
                            [&](Deviation &d) { d.built_on = on(day); });
         }},
        {"a deviation undone",
         [](RuleBench &bench, Place place, Day day) {
             return changed(bench, bench.deviation(place, before),
                            [&](Deviation &d) { d.undone_on = on(day); });
         }},
        {"a bulletin complied with",
         [](RuleBench &bench, Place place, Day day) {
             return changed(bench, bench.bulletin(place, before),
                            [&](Bulletin &b) { b.complied_on = on(day); });
         }},
    };
}

/// What the rule does not list.
std::vector<Happening> othersOfWork()
{
    const auto ofKind = [](WorkKind kind) {
        return [kind](RuleBench &bench, Place place, Day day) {
            return changed(bench, bench.session(place, day, 30), [&](WorkSession &s) {
                s.kind = kind;
                s.changed_inspected = true;
            });
        };
    };
    return {
        {"an inspection", ofKind(WorkKind::Inspection)},
        {"planning", ofKind(WorkKind::Planning)},
        {"work that changed nothing",
         [](RuleBench &bench, Place place, Day day) {
             return changed(bench, bench.session(place, day, 30),
                            [](WorkSession &s) { s.changed_inspected = false; });
         }},
        {"a step dropped",
         [](RuleBench &bench, Place place, Day day) {
             return changed(bench, bench.step(place, "Paint"),
                            [&](Step &s) { s.dropped_on = on(day); });
         }},
        {"a fastener sealed and locked",
         [](RuleBench &bench, Place place, Day day) {
             return changed(bench, bench.fastener(place, "Root"),
                            [&](Fastener &f) { f.marked_on = f.locked_on = on(day); });
         }},
        {"a measurement",
         [](RuleBench &bench, Place place, Day day) {
             return changed(bench, bench.measurement(place, "Gap"),
                            [&](Measurement &m) { m.measured_on = on(day); });
         }},
    };
}

std::vector<Happening> othersOfPapers()
{
    return {
        {"a scratch found and painted over",
         [](RuleBench &bench, Place place, Day day) {
             return changed(bench, bench.squawk(place, day), [&](Squawk &s) {
                 s.severity = Severity::Cosmetic;
                 s.fixed_on = on(day);
             });
         }},
        {"a squawk verified",
         [](RuleBench &bench, Place place, Day day) {
             return changed(bench, bench.squawk(place, before), [&](Squawk &s) {
                 s.fixed_on = on(before);
                 s.verified_on = on(day);
             });
         }},
        {"a squawk elsewhere that is reached from here",
         [](RuleBench &bench, Place place, Day day) {
             return changed(bench, bench.squawk(bench.fuselage, day),
                            [&](Squawk &s) { s.needs_access_to = {place}; });
         }},
        {"a deviation decided",
         [](RuleBench &bench, Place place, Day day) {
             return changed(bench, bench.deviation(place, before),
                            [&](Deviation &d) { d.decided_on = on(day); });
         }},
        {"a bulletin received",
         [](RuleBench &bench, Place place, Day day) { return refOf(bench.bulletin(place, day)); }},
        {"parts received",
         [](RuleBench &bench, Place place, Day day) {
             return changed(bench, bench.partLine(place, "Bracket", 1),
                            [&](PartLine &l) { l.received_on = on(day); });
         }},
    };
}

std::vector<Happening> joined(std::vector<Happening> first, const std::vector<Happening> &second)
{
    first.insert(first.end(), second.begin(), second.end());
    return first;
}

/// The facts after one happening in a box that was signed for.
std::vector<Fact> factsOf(const Happening &happening, Place (*placeIn)(const RuleBench &), Day day,
                          std::vector<Fact> *expected = nullptr)
{
    RuleBench bench(Rule::OutdatedSignOff);
    const auto point = bench.signedPoint(HoldPointKind::OwnCheck, SignerRole::Builder, signedOn);
    const RecordRef record = happening.make(bench, placeIn(bench), day);
    if (expected)
        *expected = {{record, on(day), true}};
    const auto blocker = bench.about(point, asked);
    if (blocker)
        CHECK(blocker->weight == readiness::Weight::Must);
    return blocker ? blocker->facts : std::vector<Fact>{};
}

Place inside(const RuleBench &bench)
{
    return bench.rib;
}

Place outside(const RuleBench &bench)
{
    return bench.fuselage;
}

} // namespace

TEST_CASE("Whatever was done in the box after the signature outdates it, each by itself")
{
    for (const Happening &happening : joined(workDone(), papersWritten())) {
        INFO(happening.name);
        std::vector<Fact> expected;
        const auto facts = factsOf(happening, inside, later, &expected);
        CHECK(facts == expected);
        CHECK(factsOf(happening, outside, later).empty());
        // Of one day, without times, nothing is after the other.
        CHECK(factsOf(happening, inside, signedOn).empty());
        // Not yet, when it is asked.
        CHECK(factsOf(happening, inside, "2026-03-21").empty());
    }
}

TEST_CASE("What changes nothing in the box outdates no signature")
{
    for (const Happening &happening : joined(othersOfWork(), othersOfPapers())) {
        INFO(happening.name);
        CHECK(factsOf(happening, inside, later).empty());
    }
}

TEST_CASE("A box within that was opened outdates the signature for the box around it")
{
    RuleBench bench(Rule::OutdatedSignOff);
    const auto point = bench.signedPoint(HoldPointKind::OwnCheck, SignerRole::Builder, signedOn);
    const auto inner = bench.closing(bench.panel, {bench.rib});
    bench.change(inner, [](Closing &closing) {
        closing.events = {{.closed_on = on("2026-03-09")}, {.opened_on = on(later)}};
    });
    REQUIRE(bench.must(point, asked));
    CHECK(bench.about(point, asked)->facts ==
          std::vector<Fact>{{{RecordType::Closing, inner.value()}, on(later), true}});
    // A lid within can be opened without touching anything.
    bench.change(inner, [](Closing &closing) { closing.permanent = false; });
    CHECK(bench.quiet(point, asked));
}

TEST_CASE("Tools are counted again after any work on the closing step on a later day, as advice")
{
    RuleBench bench(Rule::OutdatedSignOff);
    const auto tools =
        bench.signedPoint(HoldPointKind::ToolAndDebrisCheck, SignerRole::Builder, signedOn);
    const auto own = bench.signedPoint(HoldPointKind::OwnCheck, SignerRole::Builder, signedOn);
    const auto close = bench.step(bench.wing, "Rivet it on");
    bench.change(close, [&](Step &s) { s.closes = bench.box; });
    const auto kind =
        GENERATE(WorkKind::Assembly, WorkKind::Inspection, WorkKind::Planning, WorkKind::Other);
    const auto work = bench.session(bench.fuselage, later, 30);
    bench.change(work, [&](WorkSession &s) {
        s.kind = kind;
        s.step_id = close;
        s.changed_inspected = true;
    });
    CHECK(bench.should(tools, asked));
    CHECK(bench.quiet(own, asked));
    bench.change(work, [](WorkSession &s) { s.began = on(signedOn); });
    CHECK(bench.quiet(tools, asked));
}

TEST_CASE("An optional signature that is outdated is advice, one with findings counts as accepted")
{
    RuleBench bench(Rule::OutdatedSignOff);
    const auto point = bench.holdPoint(bench.box, HoldPointKind::OwnCheck, SignerRole::Builder);
    const auto signOff = bench.signOff(point, bench.builder, signedOn);
    bench.change(signOff, [](SignOff &s) { s.result = SignOffResult::AcceptedWithFindings; });
    bench.squawk(bench.rib, later);
    CHECK(bench.must(point, asked));
    CHECK(bench.about(point, asked)->waits_for == SignerRole::Builder);
    bench.change(point, [](HoldPoint &p) { p.required = false; });
    CHECK(bench.should(point, asked));
    // A rejection is not outdated: it was no yes.
    bench.change(signOff, [](SignOff &s) { s.result = SignOffResult::Rejected; });
    CHECK(bench.quiet(point, asked));
}
