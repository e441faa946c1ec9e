// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/ReadinessJson.h"
#include "core/readiness/Readiness.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

#include <sstream>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

std::string answered(const ProjectBuilder &project, Moment moment)
{
    std::ostringstream out;
    answers::writeJson(readiness::readiness(project.records, project.profile, moment),
                       project.records, project.profile, out);
    return out.str();
}

bool holds(const std::string &text, std::string_view part)
{
    INFO(part);
    return text.find(part) != std::string::npos;
}

} // namespace

TEST_CASE("A readiness answer is one line of JSON with every list in its place")
{
    ProjectBuilder project;
    CHECK(answered(project, on("2026-03-14T10:00")) ==
          R"({"as_of":"2026-03-14T10:00","profile":"plain","closings":[],"out_of_reach":[],)"
          R"("last_chance":[],"workable":[],"visit_plan":[],"unlock":[],"to_complete":[],)"
          R"("components":[]})"
          "\n");
}

TEST_CASE("A blocker names rule, weight, record, whom it waits for, its facts and words")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto closing = project.closing(wing);
    const auto point = project.holdPoint(closing, HoldPointKind::OwnCheck, SignerRole::Builder);
    project.signOff(point, project.builder, "2026-03-01");
    project.session(wing, "2026-03-02T09:00", 60);
    project.squawk(wing, "2026-03-03");
    const auto text = answered(project, on("2026-03-14"));
    CHECK(holds(text, R"({"id":3,"title":"Skin on Wing","state":"hold",)"));
    CHECK(holds(text,
                R"("reach":[2],"on_record":{"steps":0,"sessions":1,"photos":0,"squawks":1,)"
                R"("deviations":0,"bulletins":0,"fasteners":0,"measurements":0,"part_lines":0,)"
                R"("material_uses":0,"checks":0,"checks_done":0},"blockers":[{)"));
    CHECK(holds(text, R"({"rule":"open-squawk","weight":"must","record":"squawk","id":7,)"
                      R"("waits_for":null,"facts":[],"text":")"));
    CHECK(holds(text, R"({"rule":"outdated-sign-off","weight":"must","record":"hold_point","id":4,)"
                      R"("waits_for":"builder","facts":[)"));
    CHECK(holds(text,
                R"({"record":"squawk","id":7,"moment":"2026-03-03","heavy":true},)"
                R"({"record":"work_session","id":6,"moment":"2026-03-02T10:00","heavy":false}])"));
    CHECK(holds(text, R"("unlock":[{"record":"squawk","id":7,"closings":[3]}])"));
    CHECK(holds(text, R"("components":[{"id":2,"state":"hold"}])"));
}
