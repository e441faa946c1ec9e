// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/BranchCopy.h"

#include "core/project/acts/ClosingUp.h"
#include "core/project/acts/PartActs.h"
#include "core/project/acts/WorkActs.h"
#include "tests/support/ActBench.h"
#include "tests/support/ProjectBuilder.h"

#include <algorithm>
#include <map>

namespace lastrivet::test {

namespace {

/// A left wing with a rib, three steps in a row of which the middle one is dropped, a closing, a
/// bolt, a gap to measure, and work done on all of it.
struct LeftWing {
    explicit LeftWing(ActBench &bench)
    {
        bench.change([&](Edit &edit) { fill(edit, bench); });
    }

    void fill(Edit &edit, const ActBench &bench)
    {
        const auto day = edit.today();
        wing = edit.put(Component{.code = "LW", .name = "Left wing", .shelf = "B2"});
        rib = edit.put(Component{.parent_id = wing,
                                 .position = 1,
                                 .code = "LW-R3",
                                 .name = "Rib 3, left",
                                 .serial_number = "S-77",
                                 .zone = "left wing"});
        outside = acts::addStep(edit, bench.tank, "Paint the tank");
        first = acts::addStep(edit, rib, "Drill the left rib");
        dropped = acts::addStep(edit, rib, "Prime");
        last = acts::addStep(edit, rib, "Rivet the left rib");
        closing = acts::addClosing(edit,
                                   Closing{.component_id = wing,
                                           .title = "Left wing skin",
                                           .encloses = {rib},
                                           .method = "rivets"},
                                   {});
        check = edit.put(Check{.closing_id = closing, .item = "Left drain is open"});
        edit.update(first, [&](Step &step) {
            step.after = {outside};
            step.done_on = day;
            step.planned_on = Moment::parse("2020-01-01");
        });
        edit.update(dropped, [&](Step &step) {
            step.after = {first};
            step.dropped_on = day;
        });
        edit.update(last, [&](Step &step) {
            step.after = {dropped};
            step.closes = closing;
        });
        edit.put(Fastener{.component_id = rib,
                          .step_id = last,
                          .place = "Left bracket",
                          .quantity = 4,
                          .torque_min = 20,
                          .fitted_on = day});
        edit.put(Measurement{.component_id = rib,
                             .may_follow = {closing},
                             .what = "Gap at the left end",
                             .maximum = 0.5,
                             .value = 0.2,
                             .measured_on = day});
        edit.put(WorkSession{.began = day, .minutes = Minutes{60}, .component_id = rib});
        acts::close(edit, closing, {day, bench.builder, {}});
    }

    Id<Component> wing;
    Id<Component> rib;
    Id<Step> outside;
    Id<Step> first;
    Id<Step> dropped;
    Id<Step> last;
    Id<Closing> closing;
    Id<Check> check;
};

template <class Record> const Record &only(const Records &records, Id<Component> part)
{
    const Record *found = nullptr;
    for (const Record &record : records.of<Record>()) {
        if (record.component_id == part) {
            REQUIRE_FALSE(found);
            found = &record;
        }
    }
    REQUIRE(found);
    return *found;
}

Id<Component> copyOf(ActBench &bench, Id<Component> branch)
{
    const auto copy = acts::planBranchCopy(*bench.records(), branch);
    Id<Component> made;
    bench.change([&](Edit &edit) { made = acts::copyBranch(edit, copy); });
    return made;
}

} // namespace

TEST_CASE("Copying the left wing makes a right wing with what was planned")
{
    ActBench bench;
    const LeftWing left(bench);
    const auto wing = copyOf(bench, left.wing);
    const auto records = bench.records();
    CHECK(records->find(wing)->name == "Right wing");
    CHECK(records->find(wing)->code == "RW");
    CHECK(records->find(wing)->shelf.empty());
    const auto inside = acts::partsInside(*records, wing);
    REQUIRE(inside.size() == 1);
    const Component &rib = *records->find(inside.front());
    CHECK(rib.name == "Rib 3, right");
    CHECK(rib.code == "RW-R3");
    CHECK(rib.zone == "right wing");
    CHECK(rib.serial_number.empty());

    const Closing &closing = only<Closing>(*records, wing);
    CHECK(closing.title == "Right wing skin");
    CHECK(closing.method == "rivets");
    CHECK(closing.encloses == IdSet<Component>{rib.id});
    CHECK(closing.events.empty());
    const auto checks = std::ranges::count_if(records->checks, [&](const Check &check) {
        return check.closing_id == closing.id && check.item == "Right drain is open" &&
               !check.done_on;
    });
    CHECK(checks == 1);

    const Fastener &bolt = only<Fastener>(*records, rib.id);
    CHECK(bolt.place == "Right bracket");
    CHECK(bolt.quantity == 4);
    CHECK(bolt.torque_min == 20.0);
    CHECK_FALSE(bolt.fitted_on.has_value());
    CHECK(records->find(bolt.step_id)->component_id == rib.id);
    const Measurement &gap = only<Measurement>(*records, rib.id);
    CHECK(gap.maximum == 0.5);
    CHECK_FALSE(gap.value.has_value());
    CHECK(gap.may_follow == IdSet<Closing>{closing.id});
    CHECK(records->work_sessions.size() == 1);
}

TEST_CASE("A copy has the hold points of its original, each open")
{
    ActBench bench;
    const LeftWing left(bench);
    const auto wing = copyOf(bench, left.wing);
    const auto records = bench.records();
    const auto kinds = [&](Id<Closing> closing) {
        std::multimap<HoldPointKind, SignerRole> found;
        for (const HoldPoint &point : records->hold_points) {
            if (point.closing_id == closing)
                found.emplace(point.kind, point.signer_role);
        }
        return found;
    };
    const auto wanted = kinds(left.closing);
    REQUIRE_FALSE(wanted.empty());
    CHECK(kinds(only<Closing>(*records, wing).id) == wanted);
}

TEST_CASE("Prerequisites are kept among the copied steps; dropped ones are passed through")
{
    ActBench bench;
    const LeftWing left(bench);
    const auto wing = copyOf(bench, left.wing);
    const auto records = bench.records();
    const auto rib = acts::partsInside(*records, wing).front();
    std::vector<const Step *> steps;
    for (const Step &step : records->steps) {
        if (step.component_id == rib)
            steps.push_back(&step);
    }
    REQUIRE(steps.size() == 2);
    CHECK(steps[0]->title == "Drill the right rib");
    CHECK(steps[0]->after == IdSet<Step>{left.outside});
    CHECK_FALSE(steps[0]->done_on.has_value());
    // Planned on the day of the copy, so that nothing is told of days before it.
    CHECK(steps[0]->planned_on != Moment::parse("2020-01-01"));
    CHECK(steps[0]->planned_on.has_value());
    CHECK(steps[1]->after == IdSet<Step>{steps[0]->id});
    CHECK(steps[1]->closes == only<Closing>(*records, wing).id);
}

TEST_CASE("A copy is one change: undone, nothing of it is left")
{
    ActBench bench;
    const LeftWing left(bench);
    const auto before = bench.records();
    copyOf(bench, left.wing);
    REQUIRE((*bench).undo());
    CHECK(*bench.records() == *before);
}

TEST_CASE("A branch without a side keeps its names, and its codes are left open")
{
    ActBench bench;
    bench.change(
        [&](Edit &edit) { edit.update(bench.tank, [](Component &part) { part.code = "T1"; }); });
    auto copy = acts::planBranchCopy(*bench.records(), bench.tank);
    CHECK_FALSE(copy.swapsSides);
    CHECK(copy.parts.front().name == "Tank");
    CHECK(copy.parts.front().code.empty());
    CHECK_FALSE(acts::takenCode(*bench.records(), copy).has_value());
    copy.parts.front().code = "T1";
    CHECK(acts::takenCode(*bench.records(), copy) == 0);
}

TEST_CASE("A plan fits until parts of the branch come, go or are moved")
{
    ActBench bench;
    const LeftWing left(bench);
    const auto plan = acts::planBranchCopy(*bench.records(), left.wing);
    CHECK(acts::stillFits(*bench.records(), plan));
    bench.change(
        [&](Edit &edit) { edit.update(left.rib, [](Component &rib) { rib.name = "Rib 3"; }); });
    CHECK(acts::stillFits(*bench.records(), plan));
    SECTION("one came")
    {
        bench.change(
            [&](Edit &edit) { edit.put(Component{.parent_id = left.rib, .name = "Web"}); });
    }
    SECTION("one was moved")
    {
        bench.change([&](Edit &edit) {
            edit.update(left.rib, [&](Component &rib) { rib.parent_id = bench.tank; });
        });
    }
    CHECK_FALSE(acts::stillFits(*bench.records(), plan));
}

TEST_CASE("A plan for parts that a damaged tree has in a ring comes to an end")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto rib = project.part("Rib", wing);
    project.change(wing, [&](Component &part) { part.parent_id = rib; });
    CHECK(acts::planBranchCopy(project.records, wing).parts.size() == 2);
}

} // namespace lastrivet::test
