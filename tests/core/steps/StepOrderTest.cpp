// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/steps/StepOrder.h"

#include "core/project/acts/WorkActs.h"
#include "tests/support/ActBench.h"

namespace lastrivet::test {

TEST_CASE("Why a step cannot come before another is told as the way between them")
{
    ActBench bench;
    Id<Step> drill;
    Id<Step> prime;
    Id<Step> rivet;
    bench.change([&](Edit &edit) {
        drill = acts::addStep(edit, bench.wing, "Drill");
        prime = acts::addStep(edit, bench.wing, "Prime");
        rivet = acts::addStep(edit, bench.wing, "Rivet");
        edit.update(prime, [&](Step &step) { step.after = {drill}; });
        edit.update(rivet, [&](Step &step) { step.after = {prime}; });
    });
    CHECK(steps::wayFrom(*bench.records(), drill, rivet) == std::vector{drill, prime, rivet});
    CHECK(steps::wayFrom(*bench.records(), rivet, drill).empty());
    // A withdrawn step is passed through: those around it are neighbours.
    bench.change([&](Edit &edit) { edit.withdraw(prime, "twice"); });
    CHECK(steps::wayFrom(*bench.records(), drill, rivet) == std::vector{drill, rivet});
    CHECK(steps::withNeighbours(*bench.records(), {drill}) == IdSet<Step>{drill, rivet});
}

} // namespace lastrivet::test
