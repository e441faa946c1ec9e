// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/Violations.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

using Said = std::vector<std::string>;

} // namespace

TEST_CASE(
    "A fixed squawk says what was done, a verified one was fixed, an accepted one has a basis")
{
    ProjectBuilder project;
    const auto id = project.squawk(project.part("Wing"), "2026-01-01");
    project.change(id, [](Squawk &s) {
        s.fixed_on = on("2026-01-02");
        s.correction = "Drilled out";
    });
    CHECK(wrongs(project).empty());
    project.change(id, [](Squawk &s) { s.correction.clear(); });
    CHECK(wrongs(project) == Said{"Squawk 1 “Overdriven rivet” has fixed_on, but no correction."});
    project.change(id, [](Squawk &s) {
        s.fixed_on.reset();
        s.verified_on = on("2026-01-02");
        s.accepted_on = on("2026-01-02");
    });
    CHECK(wrongs(project) ==
          Said{"Squawk 1 “Overdriven rivet” has accepted_on, but no accepted_basis.",
               "Squawk 1 “Overdriven rivet” has accepted_on, but no accepted_by.",
               "Squawk 1 “Overdriven rivet” has verified_on, but no fixed_on.",
               "Squawk 1 “Overdriven rivet” has verified_on, but no verified_by."});
}

TEST_CASE("Acceptance of fasteners, measurements and material needs a person and a basis")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto fastener = project.fastener(wing, "Root");
    const auto measurement = project.measurement(wing, "Gap");
    const auto use = project.materialUse(wing, project.lot("Glue"), "2026-01-01");
    const auto accept = [](auto &record) { record.accepted_on = on("2026-01-02"); };
    project.change(fastener, accept);
    project.change(measurement, accept);
    project.change(use, accept);
    CHECK(wrongs(project).size() == 6);
    const auto complete = [&](auto &record) {
        record.accepted_by = project.builder;
        record.accepted_basis = "Drawing note 3";
    };
    project.change(fastener, complete);
    project.change(measurement, complete);
    project.change(use, complete);
    CHECK(wrongs(project).empty());
}

TEST_CASE("A decision has its who and why, compliance its basis, a waiver both")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto deviation = project.deviation(wing, "2026-01-01");
    const auto bulletin = project.bulletin(wing, "2026-01-01");
    const auto point =
        project.holdPoint(project.closing(wing), HoldPointKind::OwnCheck, SignerRole::Builder);
    project.change(deviation, [](Deviation &d) { d.decided_on = on("2026-01-02"); });
    project.change(bulletin, [](Bulletin &b) { b.complied_on = on("2026-01-02"); });
    project.change(point, [](HoldPoint &p) { p.waived_on = on("2026-01-02"); });
    CHECK(wrongs(project, deviation).size() == 3);
    CHECK(wrongs(project, bulletin).size() == 1);
    CHECK(wrongs(project, point).size() == 2);
    project.change(deviation, [&](Deviation &d) {
        d.decision = Decision::Approved;
        d.decided_by = project.builder;
        d.basis = "Letter";
    });
    project.change(bulletin, [](Bulletin &b) { b.basis = "Looked at"; });
    project.change(point, [&](HoldPoint &p) {
        p.waived_by = project.builder;
        p.waived_why = "Seen by photo";
    });
    CHECK(wrongs(project).empty());
}

TEST_CASE("A measured value has its moment and the other way round")
{
    ProjectBuilder project;
    const auto id = project.measurement(project.part("Wing"), "Gap");
    project.change(id, [](Measurement &m) { m.value = 0.0; });
    CHECK(wrongs(project) == Said{"Measurement 3 “Gap” has value, but no measured_on."});
    project.change(id, [](Measurement &m) { m.measured_on = on("2026-01-01"); });
    CHECK(wrongs(project).empty());
    project.change(id, [](Measurement &m) { m.value.reset(); });
    CHECK(wrongs(project) == Said{"Measurement 3 “Gap” has measured_on, but no value."});
}

TEST_CASE("A torque has its moment and value where a limit is set, and only there")
{
    ProjectBuilder project;
    const auto id = project.fastener(project.part("Wing"), "Root");
    project.change(id, [](Fastener &f) { f.torqued_on = on("2026-01-01"); });
    CHECK(wrongs(project).empty());
    project.change(id, [](Fastener &f) { f.torque_max = 25; });
    CHECK(wrongs(project) == Said{"Fastener 3 “Root” has torqued_on, but no torque_value."});
    project.change(id, [](Fastener &f) { f.torque_value = 20; });
    CHECK(wrongs(project).empty());
    project.change(id, [](Fastener &f) { f.torqued_on.reset(); });
    CHECK(wrongs(project) == Said{"Fastener 3 “Root” has torque_value, but no torqued_on."});
}

TEST_CASE("A removed fastener needs a reason")
{
    ProjectBuilder project;
    const auto id = project.fastener(project.part("Wing"), "Root");
    project.change(id, [](Fastener &f) { f.removed_on = on("2026-01-01"); });
    CHECK(wrongs(project) == Said{"Fastener 3 “Root” has removed_on, but no removed_why."});
    project.change(id, [](Fastener &f) { f.removed_why = "Stripped"; });
    CHECK(wrongs(project).empty());
}
