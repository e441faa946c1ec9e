// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/WorkActs.h"

#include "core/steps/StepOrder.h"
#include "tests/support/ActBench.h"

namespace lastrivet::test {

TEST_CASE("Steps of a part are counted on, whatever was withdrawn")
{
    ActBench bench;
    Id<Step> second;
    bench.change([&](Edit &edit) {
        acts::addStep(edit, bench.wing, "Drill");
        second = acts::addStep(edit, bench.wing, "Rivet");
        acts::addStep(edit, bench.tank, "Seal");
    });
    CHECK(bench.records()->find(second)->position == 2);
}

TEST_CASE("A tick keeps the first day, and ends a dropping")
{
    ActBench bench;
    Id<Step> step;
    const Moment today = (*bench).today();
    bench.change([&](Edit &edit) {
        step = acts::addStep(edit, bench.wing, "Drill");
        acts::dropStep(edit, step, today);
    });
    CHECK(bench.records()->find(step)->dropped_on == today);
    bench.change([&](Edit &edit) {
        acts::tickStep(edit, step, *today.plusDays(-3));
        acts::tickStep(edit, step, today);
    });
    CHECK(bench.records()->find(step)->done_on == today.plusDays(-3));
    CHECK_FALSE(bench.records()->find(step)->dropped_on.has_value());
    bench.change([&](Edit &edit) { acts::untickStep(edit, step); });
    CHECK_FALSE(bench.records()->find(step)->done_on.has_value());
}

TEST_CASE("Steps that carry the numbers of a manual keep them when one is moved between")
{
    ActBench bench;
    Id<Step> drill;
    Id<Step> rivet;
    Id<Step> prime;
    bench.change([&](Edit &edit) {
        drill = acts::addStep(edit, bench.wing, "Drill");
        rivet = acts::addStep(edit, bench.wing, "Rivet");
        edit.update(drill, [](Step &step) { step.position = 100; });
        edit.update(rivet, [](Step &step) { step.position = 110; });
        prime = acts::insertStep(edit, rivet, "Prime");
    });
    CHECK(bench.records()->find(drill)->position == 100);
    CHECK(bench.records()->find(prime)->position == 105);
    CHECK(bench.records()->find(rivet)->position == 110);
    bench.change([&](Edit &edit) { acts::moveSteps(edit, {rivet}, drill); });
    CHECK(bench.records()->find(rivet)->position == 50);
    CHECK(bench.records()->find(prime)->position == 105);
}

TEST_CASE("Steps are inserted and put in another order, and count upwards")
{
    ActBench bench;
    Id<Step> drill;
    Id<Step> rivet;
    Id<Step> prime;
    Id<Step> file;
    bench.change([&](Edit &edit) {
        drill = acts::addStep(edit, bench.wing, "Drill");
        rivet = acts::addStep(edit, bench.wing, "Rivet");
        prime = acts::insertStep(edit, rivet, "Prime");
        file = acts::addStep(edit, bench.wing, "File");
    });
    const auto order = [&] { return steps::stepsOf(*bench.records(), bench.wing); };
    CHECK(order() == std::vector{drill, prime, rivet, file});
    bench.change([&](Edit &edit) { acts::moveSteps(edit, {file, drill}, rivet); });
    CHECK(order() == std::vector{prime, drill, file, rivet});
    bench.change([&](Edit &edit) { acts::moveSteps(edit, {prime}, {}); });
    CHECK(order() == std::vector{drill, file, rivet, prime});
    CHECK(bench.records()->find(drill)->position == 3);
    CHECK(bench.records()->find(prime)->position == 6);
}

} // namespace lastrivet::test
