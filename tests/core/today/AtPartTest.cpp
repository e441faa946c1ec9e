// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/today/AtPart.h"

#include "core/project/acts/BenchActs.h"
#include "core/readiness/Readiness.h"
#include "tests/support/ActBench.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::today {

namespace {

struct Bench : test::ProjectBuilder {
    Id<Component> wing = part("Left wing");
    Id<Component> bay = part("Bay 3", wing);
    Id<Component> tail = part("Tail");

    AtPart at(Id<Component> part) const
    {
        return atPart(records, readiness::readiness(records, profile, test::on("2026-03-14")),
                      part);
    }
};

} // namespace

TEST_CASE("At a part are its steps and those below it, what can be worked on first")
{
    Bench bench;
    const auto first = bench.step(bench.bay, "Clamp");
    const auto later = bench.step(bench.wing, "Rivet", {first});
    const auto free = bench.step(bench.wing, "Label");
    bench.step(bench.tail, "Elsewhere");
    const auto here = bench.at(bench.wing);
    REQUIRE(here.steps.size() == 3);
    CHECK(here.workable == 2);
    CHECK(std::count(here.steps.begin(), here.steps.end(), first) == 1);
    CHECK(std::count(here.steps.begin(), here.steps.end(), free) == 1);
    CHECK(here.steps.back() == later);
    CHECK(bench.at(bench.bay).steps == std::vector{first});
    bench.change(first, [](Step &step) { step.done_on = test::on("2026-03-10"); });
    CHECK(bench.at(bench.wing).workable == 2);
    CHECK(bench.at(bench.wing).steps.size() == 2);
}

TEST_CASE("Fasteners with something left to do come first, removed ones not at all")
{
    Bench bench;
    const auto done = bench.fastener(bench.bay, "Hinge");
    bench.change(done, [](Fastener &bolt) { bolt.fitted_on = test::on("2026-03-01"); });
    const auto open = bench.fastener(bench.bay, "Bracket");
    const auto gone = bench.fastener(bench.bay, "Old bracket");
    bench.change(gone, [](Fastener &bolt) {
        bolt.fitted_on = test::on("2026-03-01");
        bolt.removed_on = test::on("2026-03-02");
        bolt.removed_why = "replaced";
    });
    CHECK(bench.at(bench.wing).fasteners == std::vector{open, done});
}

TEST_CASE("What stays open and its list are those of the closings that reach the part")
{
    Bench bench;
    const auto skin = bench.closing(bench.wing);
    bench.closing(bench.tail);
    bench.holdPoint(skin, HoldPointKind::ToolAndDebrisCheck, SignerRole::Builder);
    Check line;
    line.closing_id = skin;
    line.item = "Drains are open";
    const auto open = bench.add(line);
    line.item = "Ticked";
    line.done_on = test::on("2026-03-01");
    bench.add(line);
    const auto here = bench.at(bench.bay);
    REQUIRE(here.stays_open.size() == 1);
    CHECK(here.stays_open.front().closing == skin);
    CHECK(here.checks == std::vector{open});
    CHECK(bench.at(bench.tail).checks.empty());
}

TEST_CASE("The newest pictures of a part come first, those of work and squawks there among them")
{
    Bench bench;
    const auto squawk = bench.squawk(bench.bay, "2026-03-02");
    const auto old = bench.photo("2026-03-01", {{RecordType::Component, bench.wing.value()}});
    const auto newer = bench.photo("2026-03-05", {{RecordType::Squawk, squawk.value()}});
    bench.photo("2026-03-06", {{RecordType::Component, bench.tail.value()}});
    CHECK(bench.at(bench.wing).photos == std::vector{newer, old});
}

TEST_CASE("Pictures of what was measured, glued and delivered for a part are among its own")
{
    Bench bench;
    const auto gap = bench.measurement(bench.bay, "Gap");
    const auto glue = bench.materialUse(bench.bay, bench.lot("Resin"), "2026-03-01");
    const auto skin = bench.partLine(bench.bay, "Skin", 1);
    const auto elsewhere = bench.measurement(bench.tail, "Play");
    const auto first = bench.photo("2026-03-01", {{RecordType::Measurement, gap.value()}});
    const auto second = bench.photo("2026-03-02", {{RecordType::MaterialUse, glue.value()}});
    const auto third = bench.photo("2026-03-03", {{RecordType::PartLine, skin.value()}});
    bench.photo("2026-03-04", {{RecordType::Measurement, elsewhere.value()}});
    CHECK(bench.at(bench.wing).photos == std::vector{third, second, first});
}

TEST_CASE("A part that is gone has nothing at it")
{
    Bench bench;
    bench.step(bench.bay, "Clamp");
    CHECK(bench.at(Id<Component>{999}).steps.empty());
}

TEST_CASE("Parts worked on last are told once, the latest first")
{
    Bench bench;
    bench.session(bench.bay, "2026-03-01", 10);
    bench.session(bench.tail, "2026-03-02", 10);
    bench.session(bench.bay, "2026-03-03T10:00", 10);
    CHECK(workedOnLast(bench.records, 5) == std::vector{bench.bay, bench.tail});
    CHECK(workedOnLast(bench.records, 1) == std::vector{bench.bay});
}

} // namespace lastrivet::today

namespace lastrivet::acts {

namespace {

/// At the wing, to be torqued to 20 to 25.
Fastener hingeBolt(const test::ActBench &bench)
{
    Fastener hinge;
    hinge.component_id = bench.wing;
    hinge.place = "Hinge";
    hinge.torque_min = 20;
    hinge.torque_max = 25;
    return hinge;
}

} // namespace

TEST_CASE("A bolt with a torque limit and a split pin is fitted, torqued, locked and sealed")
{
    test::ActBench bench;
    Id<Fastener> bolt;
    bench.change([&](Edit &edit) {
        Fastener hinge = hingeBolt(bench);
        hinge.locking = Locking::SplitPin;
        bolt = edit.put(hinge);
    });
    const auto next = [&] { return nextAct(*bench.records()->find(bolt)); };
    CHECK(next() == FastenerAct::Fit);
    bench.change([&](Edit &edit) { fitFastener(edit, bolt, edit.today()); });
    CHECK(next() == FastenerAct::Torque);
    bench.change([&](Edit &edit) { torqueFastener(edit, bolt, edit.today(), 22.5); });
    CHECK(bench.records()->find(bolt)->torque_value == 22.5);
    CHECK(next() == FastenerAct::Lock);
    bench.change([&](Edit &edit) { lockFastener(edit, bolt, edit.today()); });
    CHECK(next() == FastenerAct::Mark);
    bench.change([&](Edit &edit) { markFastener(edit, bolt, edit.today()); });
    CHECK_FALSE(next());
}

TEST_CASE("A bolt that is torqued again has to be sealed again")
{
    test::ActBench bench;
    Id<Fastener> bolt;
    bench.change([&](Edit &edit) {
        Fastener hinge = hingeBolt(bench);
        hinge.fitted_on = Moment::parse("2025-01-10");
        hinge.torqued_on = Moment::parse("2025-01-10");
        hinge.torque_value = 19;
        hinge.marked_on = Moment::parse("2025-01-10");
        bolt = edit.put(hinge);
    });
    bench.change([&](Edit &edit) { torqueFastener(edit, bolt, *Moment::parse("2025-01-10"), 21); });
    CHECK(bench.records()->find(bolt)->marked_on.has_value());
    bench.change(
        [&](Edit &edit) { torqueFastener(edit, bolt, *Moment::parse("2025-01-12"), 22.5); });
    CHECK_FALSE(bench.records()->find(bolt)->marked_on.has_value());
    CHECK(nextAct(*bench.records()->find(bolt)) == FastenerAct::Mark);
}

TEST_CASE("A bolt that is torqued again is to be locked again, and accepted again if it must be")
{
    test::ActBench bench;
    Id<Fastener> bolt;
    bench.change([&](Edit &edit) {
        Fastener hinge = hingeBolt(bench);
        hinge.locking = Locking::SplitPin;
        hinge.fitted_on = hinge.torqued_on = hinge.locked_on = Moment::parse("2025-01-10");
        hinge.torque_value = 27;
        hinge.accepted_on = Moment::parse("2025-01-11");
        hinge.accepted_by = bench.inspector;
        hinge.accepted_basis = "Letter";
        bolt = edit.put(hinge);
    });
    bench.change([&](Edit &edit) { torqueFastener(edit, bolt, *Moment::parse("2025-01-10"), 28); });
    CHECK(bench.records()->find(bolt)->locked_on.has_value());
    CHECK(bench.records()->find(bolt)->accepted_on.has_value());
    bench.change([&](Edit &edit) { torqueFastener(edit, bolt, *Moment::parse("2025-01-12"), 35); });
    const Fastener again = *bench.records()->find(bolt);
    CHECK_FALSE(again.locked_on.has_value());
    CHECK_FALSE(again.accepted_on.has_value());
    CHECK_FALSE(again.accepted_by);
    CHECK(again.accepted_basis.empty());
    CHECK(nextAct(again) == FastenerAct::Lock);
}

TEST_CASE("A self-locking nut without a limit is done when it is fitted")
{
    Fastener nut;
    nut.fitted_on = Moment::parse("2026-03-01");
    nut.locking = Locking::SelfLockingNut;
    CHECK_FALSE(nextAct(nut));
}

TEST_CASE("Notes stand below each other with their day")
{
    test::ActBench bench;
    bench.change([&](Edit &edit) { addNote(edit, bench.wing, "Mind the grommet"); });
    bench.change([&](Edit &edit) { addNote(edit, bench.wing, "Found it"); });
    CHECK(bench.records()->find(bench.wing)->note ==
          "2026-03-14: Mind the grommet\n2026-03-14: Found it");
}

} // namespace lastrivet::acts
