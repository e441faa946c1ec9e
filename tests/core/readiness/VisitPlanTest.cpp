// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Readiness.h"

#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

namespace lastrivet::readiness {

using test::on;

TEST_CASE("A closing that waits for the visit alone stands in the plan at 0 minutes, whatever is "
          "open in boxes within a box that a factory made")
{
    test::ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto shell = project.part("Tank shell", wing);
    const auto sender = project.part("Fuel sender");
    const auto wires = project.part("Wires", sender);
    const auto skin = project.closing(wing);
    project.holdPoint(skin, HoldPointKind::Stage, SignerRole::Inspector);
    // The tank's box lies in the wing; what is open lies in the tank's reach, not in the wing's.
    project.change(project.closing(shell, {sender}),
                   [](Closing &closing) { closing.made_by = MadeBy::Factory; });
    project.closing(wires);
    project.step(wires, "Solder the wires");

    const Answer answer = readiness(project.records, project.profile, on("2026-06-30"));
    REQUIRE(answer.closing(skin)->state == State::ReadyToInspect);
    REQUIRE(answer.visit_plan.size() == 1);
    CHECK(answer.visit_plan.front() == VisitPlanRow{skin, Minutes{0}, 0, 0});
}

} // namespace lastrivet::readiness
