// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Strays.h"

#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A record whose part is not on record is found, and none where all are")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    project.step(wing, "Drill");
    const auto step = project.step(wing, "Rivet");
    CHECK_FALSE(readiness::firstStray(project.records));
    project.change(step, [](Step &changed) { changed.component_id = Id<Component>{999}; });
    CHECK(readiness::firstStray(project.records) ==
          readiness::Stray{{RecordType::Step, step.value()}, {RecordType::Component, 999}});
    project.withdraw(step);
    CHECK_FALSE(readiness::firstStray(project.records));
}

TEST_CASE("A part that lies inside itself is found, also by way of others")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto panel = project.part("Panel", wing);
    const auto rib = project.part("Rib", panel);
    CHECK_FALSE(readiness::firstRing(project.records));
    project.change(panel, [panel](Component &changed) { changed.parent_id = panel; });
    CHECK(readiness::firstRing(project.records) == panel);
    project.change(panel, [rib](Component &changed) { changed.parent_id = rib; });
    CHECK(readiness::firstRing(project.records) == panel);
    project.withdraw(rib);
    CHECK_FALSE(readiness::firstRing(project.records));
}

TEST_CASE("A part that is withdrawn is as good as none, also in a set")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto flap = project.part("Flap");
    const auto closing = project.closing(wing, {wing, flap});
    CHECK_FALSE(readiness::firstStray(project.records));
    project.withdraw(flap);
    CHECK(readiness::firstStray(project.records) ==
          readiness::Stray{{RecordType::Closing, closing.value()},
                           {RecordType::Component, flap.value()}});
}
