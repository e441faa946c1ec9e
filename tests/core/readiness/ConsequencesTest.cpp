// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Readiness.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace lastrivet;
using namespace lastrivet::test;
using namespace lastrivet::readiness;

namespace {

using Rows = std::vector<VisitPlanRow>;
using Steps = std::vector<Id<Step>>;

constexpr auto day = "2026-03-20";

/// Parts with closings of their own, and work in them.
struct Site : ProjectBuilder {
    Answer ask() const { return readiness::readiness(records, profile, on(day)); }
    State state(Id<Closing> id) const { return ask().closing(id)->state; }

    /// A part with a closing that an inspector has to sign.
    std::pair<Id<Component>, Id<Closing>> visited(std::string_view name, Id<Component> inside = {})
    {
        const auto made = part(name, inside);
        const auto box = closing(made);
        holdPoint(box, HoldPointKind::Stage, SignerRole::Inspector);
        return {made, box};
    }
    Id<Step> work(Id<Component> part, std::int64_t minutes)
    {
        const auto id = step(part, "Work");
        change(id, [&](Step &s) { s.estimate_minutes = Minutes{minutes}; });
        return id;
    }
    void close(Id<Closing> id, std::string_view moment = "2026-03-10")
    {
        change(id, [&](Closing &c) { c.events = {{on(moment), {}, {}, "Skin on", false}}; });
    }
    bool isGap(Gap what, RecordRef record) const
    {
        const auto gaps = ask().to_complete;
        return std::find(gaps.begin(), gaps.end(), ToComplete{what, record}) != gaps.end();
    }
};

} // namespace

TEST_CASE("The plan of a visit takes the closing with the least work first, of equals the first id")
{
    Site site;
    const auto [wing, wingBox] = site.visited("Wing");
    const auto [fin, finBox] = site.visited("Fin");
    const auto [tail, tailBox] = site.visited("Tail");
    site.work(wing, 60);
    site.work(fin, 30);
    site.work(tail, 30);
    CHECK(site.ask().visit_plan == Rows{{finBox, Minutes{30}, 0, 0},
                                        {tailBox, Minutes{60}, 0, 0},
                                        {wingBox, Minutes{120}, 0, 0}});
    // What can be opened again needs no visit.
    site.change(finBox, [](Closing &c) { c.permanent = false; });
    CHECK(site.ask().visit_plan.size() == 2);
}

TEST_CASE(
    "In the plan of a visit fixed and cosmetic squawks are no work, and what waits is counted")
{
    Site site;
    const auto [wing, box] = site.visited("Wing");
    site.work(wing, 30);
    const auto fixed = site.squawk(wing, "2026-03-01");
    site.change(fixed, [](Squawk &s) {
        s.estimate_minutes = Minutes{500};
        s.fixed_on = on("2026-03-02");
    });
    const auto scratch = site.squawk(wing, "2026-03-01");
    site.change(scratch, [](Squawk &s) {
        s.estimate_minutes = Minutes{500};
        s.severity = Severity::Cosmetic;
    });
    CHECK(site.ask().visit_plan == Rows{{box, Minutes{30}, 0, 0}});
    const auto bulletin = site.bulletin(wing, "2026-03-01");
    CHECK(site.ask().visit_plan == Rows{{box, Minutes{30}, 0, 1}});
    // As advice it is none of the other blockers.
    site.change(bulletin, [](Bulletin &b) { b.applies = true; });
    CHECK(site.ask().visit_plan == Rows{{box, Minutes{30}, 0, 0}});
}

TEST_CASE("The work in an open box within is part of the visit's, that in a closed one is not")
{
    Site site;
    const auto wing = site.part("Wing");
    const auto tank = site.part("Tank", wing);
    const auto sender = site.part("Sender");
    const auto outer = site.closing(wing);
    site.holdPoint(outer, HoldPointKind::Stage, SignerRole::Inspector);
    const auto inner = site.closing(tank, {sender});
    site.work(wing, 30);
    site.work(sender, 45);
    CHECK(site.ask().visit_plan == Rows{{outer, Minutes{75}, 0, 0}});
    site.close(inner);
    // Closed with a gap: told as one of the other blockers, not as work.
    CHECK(site.ask().visit_plan == Rows{{outer, Minutes{30}, 0, 1}});
}

TEST_CASE("Steps are offered by what they hold up, then place, then length, missing ones last")
{
    Site site;
    const auto loose = site.part("Bench");
    const auto [wing, box] = site.visited("Wing");
    const auto unplaced = site.work(loose, 10);
    const auto placed = site.work(loose, 90);
    site.change(placed, [](Step &s) { s.position = 5; });
    const auto unknown = site.step(loose, "Work");
    site.change(unknown, [](Step &s) { s.position = 5; });
    const auto holds = site.work(wing, 500);
    CHECK(site.ask().workable == Steps{holds, placed, unknown, unplaced});
    // A line for parts that is planned for later lacks nothing yet.
    const auto line = site.partLine(wing, "Bracket", 4);
    CHECK(site.ask().workable == Steps{placed, unknown, unplaced, holds});
    site.change(line, [](PartLine &l) { l.planned_on = on("2026-04-01"); });
    CHECK(site.ask().workable == Steps{holds, placed, unknown, unplaced});
}

TEST_CASE("A closing step waits until nothing at all stands against the closing")
{
    Site site;
    const auto wing = site.part("Wing");
    const auto box = site.closing(wing);
    const auto bench = site.part("Bench");
    const auto close = site.step(bench, "Rivet it on");
    site.change(close, [&](Step &s) { s.closes = box; });
    CHECK(site.ask().workable == Steps{close});
    site.holdPoint(box, HoldPointKind::OwnCheck, SignerRole::Builder);
    REQUIRE(site.state(box) == State::ReadyToSign);
    CHECK(site.ask().workable.empty());
}

TEST_CASE("A step waits for what is before a step that was taken back or is planned for later")
{
    Site site;
    const auto bench = site.part("Bench");
    const auto first = site.step(bench, "First");
    const auto second = site.step(bench, "Second", {first});
    const auto third = site.step(bench, "Third", {second});
    CHECK(site.ask().workable == Steps{first});
    const bool isTakenBack = GENERATE(true, false);
    if (isTakenBack)
        site.withdraw(second);
    else
        site.change(second, [](Step &s) { s.planned_on = on("2026-04-01"); });
    CHECK(site.ask().workable == Steps{first});
    site.change(first, [](Step &s) { s.done_on = on("2026-03-01"); });
    CHECK(site.ask().workable == Steps{third});
}

TEST_CASE(
    "In a closed box only what may follow can be worked on; what is left there is out of reach")
{
    Site site;
    const auto wing = site.part("Wing");
    const auto box = site.closing(wing);
    const auto step = site.step(wing, "Prime");
    const RecordRef ref{RecordType::Step, step.value()};
    site.close(box);
    CHECK(site.ask().workable.empty());
    CHECK(site.ask().out_of_reach == std::vector<RecordAndClosings>{{ref, {box}}});
    site.change(step, [&](Step &s) { s.may_follow = {box}; });
    CHECK(site.ask().workable == Steps{step});
    CHECK(site.ask().out_of_reach.empty());
    // A lid that can be opened again buries nothing.
    site.change(step, [](Step &s) { s.may_follow.clear(); });
    site.change(box, [](Closing &c) { c.permanent = false; });
    CHECK(site.ask().workable == Steps{step});
    CHECK(site.ask().out_of_reach.empty());
}

TEST_CASE("A step elsewhere that comes before a closing is buried by none")
{
    Site site;
    const auto wing = site.part("Wing");
    const auto box = site.closing(wing);
    const auto jig = site.step(site.part("Bench"), "Make the jig");
    const auto close = site.step(wing, "Rivet it on", {jig});
    site.change(close, [&](Step &s) { s.closes = box; });
    site.close(box);
    CHECK(site.ask().out_of_reach.empty());
    CHECK(site.isGap(Gap::ClosingStepNotDone, {RecordType::Step, close.value()}));
    site.change(close, [](Step &s) { s.planned_on = on("2026-04-01"); });
    CHECK_FALSE(site.isGap(Gap::ClosingStepNotDone, {RecordType::Step, close.value()}));
}

TEST_CASE("The last chance names advice and what may follow here, not what must be done first")
{
    Site site;
    const auto [wing, box] = site.visited("Wing");
    const auto later = site.step(wing, "Leak test");
    const auto jig = site.step(site.part("Bench"), "Make the jig");
    site.change(later, [&, closing = box](Step &s) { s.may_follow = {closing}; });
    site.change(jig, [&, closing = box](Step &s) { s.may_follow = {closing}; });
    const auto close = site.step(wing, "Rivet it on", {jig});
    site.change(close, [&, closing = box](Step &s) { s.closes = closing; });
    REQUIRE(site.state(box) == State::ReadyToInspect);
    const auto chances = site.ask().last_chance;
    REQUIRE(chances.size() == 1);
    const auto names = [&](RecordType type, std::int64_t id) {
        const auto &items = chances.front().items;
        return std::find(items.begin(), items.end(), RecordRef{type, id}) != items.end();
    };
    CHECK(names(RecordType::Step, later.value()));
    CHECK_FALSE(names(RecordType::Step, jig.value()));
    CHECK_FALSE(names(RecordType::HoldPoint, site.records.hold_points.begin()->id.value()));
}

TEST_CASE("What opens the way for most closings comes first")
{
    Site site;
    const auto wing = site.part("Wing");
    const auto rib = site.part("Rib", wing);
    site.closing(wing, {wing});
    site.closing(wing, {rib});
    const auto one = site.squawk(wing, "2026-03-01");
    const auto two = site.squawk(rib, "2026-03-01");
    const auto unlock = site.ask().unlock;
    REQUIRE(unlock.size() == 2);
    CHECK(unlock[0].record == RecordRef{RecordType::Squawk, two.value()});
    CHECK(unlock[1].record == RecordRef{RecordType::Squawk, one.value()});
}

TEST_CASE("Structure without a closing is told, unless one lies in it or somebody said why not")
{
    Site site;
    const auto wing = site.part("Wing");
    const auto rib = site.part("Rib", wing);
    const RecordRef ref{RecordType::Component, wing.value()};
    CHECK_FALSE(site.isGap(Gap::PartWithoutClosing, ref));
    site.change(wing, [](Component &c) { c.kind = ComponentKind::LiftingSurface; });
    CHECK(site.isGap(Gap::PartWithoutClosing, ref));
    const auto lid = site.closing(rib);
    CHECK_FALSE(site.isGap(Gap::PartWithoutClosing, ref));
    site.change(lid, [](Closing &c) { c.permanent = false; });
    CHECK(site.isGap(Gap::PartWithoutClosing, ref));
    site.change(wing, [](Component &c) { c.never_enclosed_why = "Open frame"; });
    CHECK_FALSE(site.isGap(Gap::PartWithoutClosing, ref));
}

TEST_CASE("A part wears the worst of the states within it")
{
    Site site;
    const auto wing = site.part("Wing");
    const auto first = site.part("First", wing);
    const auto second = site.part("Second", wing);
    const auto one = site.closing(first);
    const auto two = site.closing(second);
    const auto badge = [&] {
        const auto badges = site.ask().components;
        return std::find_if(badges.begin(), badges.end(),
                            [&](const Badge &b) { return b.id == wing; })
            ->state;
    };
    CHECK(badge() == State::Clear);
    site.holdPoint(one, HoldPointKind::OwnCheck, SignerRole::Builder);
    CHECK(badge() == State::ReadyToSign);
    site.holdPoint(two, HoldPointKind::Stage, SignerRole::Inspector);
    CHECK(badge() == State::ReadyToInspect);
    site.squawk(first, "2026-03-01");
    CHECK(badge() == State::Hold);
    site.close(two);
    CHECK(badge() == State::ClosedEarly);
}

TEST_CASE("Work that began counts on record before it ended, and its end is not taken from a day")
{
    Site site;
    const auto wing = site.part("Wing");
    const auto box = site.closing(wing);
    const auto session = site.session(wing, "2026-03-20T23:30", 60);
    CHECK(site.ask().closing(box)->on_record.sessions == 1);
    // Without a time of day nobody knows that it went on into the next.
    site.change(session, [](WorkSession &s) {
        s.began = on("2026-03-10");
        s.minutes = Minutes{3000};
    });
    const auto point = site.holdPoint(box, HoldPointKind::OwnCheck, SignerRole::Builder);
    site.signOff(point, site.builder, "2026-03-10");
    CHECK(site.state(box) == State::Clear);
    const auto blockers = site.ask().closing(box)->blockers;
    CHECK(std::none_of(blockers.begin(), blockers.end(), [](const Blocker &blocker) {
        return blocker.rule == Rule::OutdatedSignOff;
    }));
}
