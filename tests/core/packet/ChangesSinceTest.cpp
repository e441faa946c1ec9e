// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/ChangesSince.h"

#include "core/base/Tongue.h"
#include "core/readiness/Readiness.h"
#include "tests/support/WingProject.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <string_view>

using namespace lastrivet;
using lastrivet::test::WingProject;

namespace {

void sign(WingProject &project, std::string_view day)
{
    project.records.sign_offs.put({.id = Id<SignOff>{1},
                                   .hold_point_id = project.preCover,
                                   .inspection_id = Id<Inspection>{1},
                                   .person_id = project.inspector,
                                   .signed_on = WingProject::at(day),
                                   .result = SignOffResult::Accepted});
}

std::optional<packet::ChangesSince> since(const WingProject &project)
{
    const auto answer = readiness::readiness(project.records, project.profile, project.as_of);
    return packet::changesSince(project.records, project.profile, answer, project.preCover);
}

std::vector<std::string> whats(const packet::ChangesSince &since)
{
    std::vector<std::string> list;
    for (const auto &change : since.changes)
        list.push_back(change.on.text() + " " + english(change.what));
    return list;
}

} // namespace

TEST_CASE("Without a signature there is nothing since")
{
    const WingProject project;
    CHECK_FALSE(since(project));
}

TEST_CASE("Of signatures of one day, timed and not, the one that readiness goes by counts")
{
    WingProject project;
    const auto put = [&](std::int64_t id, std::string_view moment, Id<Inspection> visit) {
        project.records.sign_offs.put({.id = Id<SignOff>{id},
                                       .hold_point_id = project.preCover,
                                       .inspection_id = visit,
                                       .person_id = project.inspector,
                                       .signed_on = WingProject::at(moment),
                                       .result = SignOffResult::Accepted});
    };
    put(1, "2026-02-20T15:00", {});
    put(2, "2026-02-20", Id<Inspection>{1});
    put(3, "2026-02-20T09:00", {});
    const auto changes = since(project);
    REQUIRE(changes);
    CHECK(changes->signature.signed_on == WingProject::at("2026-02-20"));
    CHECK(changes->report == "V-1");
}

TEST_CASE("What touched the region after the signature is told by date")
{
    WingProject project;
    sign(project, "2026-02-20");
    const auto changes = since(project);
    REQUIRE(changes);
    CHECK(changes->closing == "Upper skin of the left wing");
    CHECK(changes->signature.by == "Ines Inspector");
    CHECK(changes->signature.credential == "No. 77");
    CHECK(whats(*changes) ==
          std::vector<std::string>{"2026-02-21 Torqued: 4 × bolt M5 at Rib 3 to spar in LW-R3",
                                   "2026-02-27 Work: fabrication",
                                   "2026-02-28 Step done: Rivet rib 3",
                                   "2026-02-28T20:30 Work on: Rivet rib 3"});
    CHECK(changes->report == "V-1");
    REQUIRE(changes->changes[0].torque);
    CHECK(changes->changes[0].torque->torque_value == 6);
    CHECK(changes->changes[0].torque->torque_max == 6.5);
    CHECK(changes->changes[0].torque->tool == "Torque wrench");
    CHECK_FALSE(changes->changes[1].torque);
    CHECK(changes->changes[3].by == "Berta Builder, Hans Helper");
    CHECK_FALSE(changes->changes[3].is_certain);
    CHECK(changes->changes[2].is_certain);
    CHECK(changes->photos.empty());
}

TEST_CASE("What was found and corrected at one moment is told as both")
{
    WingProject project;
    sign(project, "2026-02-28T21:00");
    project.records.squawks.put({.id = Id<Squawk>{9},
                                 .number = "9",
                                 .component_id = project.rib,
                                 .title = "Loose bolt",
                                 .found_on = WingProject::at("2026-03-02"),
                                 .correction = "Tightened",
                                 .fixed_on = WingProject::at("2026-03-02")});
    const auto changes = since(project);
    REQUIRE(changes);
    CHECK(whats(*changes) == std::vector<std::string>{"2026-03-02 Squawk 9 found: Loose bolt",
                                                      "2026-03-02 Squawk 9 corrected: Loose bolt"});
}

TEST_CASE("Findings of the visit stand apart, and pictures since come newest first")
{
    WingProject project;
    sign(project, "2026-02-05");
    const auto changes = since(project);
    REQUIRE(changes);
    REQUIRE(changes->findings.size() == 1);
    CHECK(changes->findings[0].finding_number == "F1");
    CHECK(changes->findings[0].state == packet::SquawkEntry::State::Fixed);
    REQUIRE(changes->photos.size() == 3);
    CHECK(changes->photos[0].caption == "Tank before closing");
    REQUIRE_FALSE(changes->changes.empty());
    for (const std::string &what : whats(*changes))
        CHECK(what.find("Squawk 1") == std::string::npos);
}

TEST_CASE("Findings elsewhere stay out, and what is open inside comes first")
{
    WingProject project;
    sign(project, "2026-02-05");
    const auto put = [&](std::int64_t id, Id<Component> part, Severity severity,
                         Id<Inspection> visit) {
        project.records.squawks.put({.id = Id<Squawk>{id},
                                     .number = std::to_string(id),
                                     .component_id = part,
                                     .title = "Finding",
                                     .severity = severity,
                                     .found_on = WingProject::at("2026-02-01"),
                                     .inspection_id = visit});
    };
    put(21, project.tail, Severity::Airworthiness, Id<Inspection>{1});
    put(22, project.rib, Severity::Cosmetic, Id<Inspection>{1});
    put(23, project.rib, Severity::Airworthiness, {});
    put(24, project.rib, Severity::Workmanship, {});
    const auto changes = since(project);
    REQUIRE(changes);
    std::vector<std::string> numbers;
    for (const auto &finding : changes->findings)
        numbers.push_back(finding.number);
    CHECK(numbers == std::vector<std::string>{"23", "22", "1"});
}

TEST_CASE("What came since a signature is named in the language of the paper to its last word")
{
    WingProject project;
    sign(project, "2026-02-19");
    const auto changes = since(project);
    REQUIRE(changes);
    const Tongue german{[](std::string_view pattern) {
                            return std::string(pattern == "Fitted: {0}"        ? "Eingebaut: {0}"
                                               : pattern == "{0} × {1} at {2}" ? "{0} × {1}, {2}"
                                                                               : pattern);
                        },
                        {}};
    const bool isNamed =
        std::any_of(changes->changes.begin(), changes->changes.end(), [&](const auto &change) {
            return said(change.what, german).starts_with("Eingebaut: 4 × bolt M5, Rib 3 to spar");
        });
    CHECK(isNamed);
}
