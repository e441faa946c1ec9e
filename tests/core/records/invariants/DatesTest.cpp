// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/Violations.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

using Said = std::vector<std::string>;

} // namespace

namespace {

template <class Record> struct Pair {
    const char *earlierName;
    std::optional<Moment> Record::*earlier;
    const char *laterName;
    std::optional<Moment> Record::*later;
};

/// Same day and ties are quiet, a minute or a day too early is not.
template <class Record>
void checkPair(ProjectBuilder &project, Id<Record> id, const Pair<Record> &pair)
{
    const auto setTo = [&](const char *first, const char *second) {
        project.change(id, [&](Record &record) {
            record.*pair.earlier = on(first);
            record.*pair.later = on(second);
        });
        return wrongs(project, id);
    };
    const auto isNamed = [&](const Said &said) {
        const auto named = std::string(pair.laterName) + " ";
        return std::any_of(said.begin(), said.end(), [&](const std::string &text) {
            return text.find("has " + named) != std::string::npos &&
                   text.find(std::string("before ") + pair.earlierName) != std::string::npos;
        });
    };
    INFO(pair.laterName);
    CHECK_FALSE(isNamed(setTo("2026-01-02", "2026-01-02")));
    CHECK_FALSE(isNamed(setTo("2026-01-02T12:00", "2026-01-02T12:00")));
    CHECK_FALSE(isNamed(setTo("2026-01-02T12:00", "2026-01-02")));
    CHECK(isNamed(setTo("2026-01-02T12:00", "2026-01-02T11:59")));
    CHECK(isNamed(setTo("2026-01-02", "2026-01-01")));
}

} // namespace

TEST_CASE("A squawk is found, then fixed, then verified; found, then accepted")
{
    ProjectBuilder project;
    const auto id = project.squawk(project.part("Wing"), "2026-01-01");
    checkPair<Squawk>(project, id,
                      {"found_on", &Squawk::found_on, "accepted_on", &Squawk::accepted_on});
    checkPair<Squawk>(project, id, {"found_on", &Squawk::found_on, "fixed_on", &Squawk::fixed_on});
    checkPair<Squawk>(project, id,
                      {"fixed_on", &Squawk::fixed_on, "verified_on", &Squawk::verified_on});
}

TEST_CASE("A deviation is raised, asked about, decided; built, then undone")
{
    ProjectBuilder project;
    const auto id = project.deviation(project.part("Wing"), "2026-01-01");
    checkPair<Deviation>(
        project, id, {"raised_on", &Deviation::raised_on, "decided_on", &Deviation::decided_on});
    checkPair<Deviation>(project, id,
                         {"raised_on", &Deviation::raised_on, "asked_on", &Deviation::asked_on});
    checkPair<Deviation>(project, id,
                         {"asked_on", &Deviation::asked_on, "decided_on", &Deviation::decided_on});
    checkPair<Deviation>(project, id,
                         {"built_on", &Deviation::built_on, "undone_on", &Deviation::undone_on});
}

TEST_CASE("A deviation may be raised after it was built")
{
    ProjectBuilder project;
    const auto id = project.deviation(project.part("Wing"), "2026-01-05");
    project.change(id, [](Deviation &d) { d.built_on = on("2026-01-01"); });
    CHECK(wrongs(project).empty());
}

TEST_CASE("A fastener is fitted, then torqued, then marked, locked, removed")
{
    ProjectBuilder project;
    const auto id = project.fastener(project.part("Wing"), "Root");
    using F = Fastener;
    checkPair<F>(project, id, {"fitted_on", &F::fitted_on, "torqued_on", &F::torqued_on});
    checkPair<F>(project, id, {"torqued_on", &F::torqued_on, "marked_on", &F::marked_on});
    checkPair<F>(project, id, {"fitted_on", &F::fitted_on, "locked_on", &F::locked_on});
    checkPair<F>(project, id, {"fitted_on", &F::fitted_on, "removed_on", &F::removed_on});
}

TEST_CASE("An inspection is asked for, held, completed; parts are ordered, then received")
{
    ProjectBuilder project;
    const auto visit = project.add(Inspection{});
    using I = Inspection;
    checkPair<I>(project, visit, {"asked_on", &I::asked_on, "held_on", &I::held_on});
    checkPair<I>(project, visit, {"held_on", &I::held_on, "completed_on", &I::completed_on});
    const auto line = project.partLine(project.part("Wing"), "Bolt", 4);
    checkPair<PartLine>(
        project, line,
        {"ordered_on", &PartLine::ordered_on, "received_on", &PartLine::received_on});
}

TEST_CASE("A day without a time between two times does not hide that they are the wrong way round")
{
    ProjectBuilder project;
    const auto visit = project.add(Inspection{});
    const auto completedAt = [&](const char *moment) {
        project.change(visit, [&](Inspection &inspection) {
            inspection.asked_on = on("2026-01-02T10:00");
            inspection.held_on = on("2026-01-02");
            inspection.completed_on = on(moment);
        });
        return wrongs(project, visit);
    };
    CHECK(completedAt("2026-01-02T10:00").empty());
    const auto said = completedAt("2026-01-02T09:59");
    REQUIRE(said.size() == 1);
    CHECK_THAT(said.front(), Catch::Contains("has completed_on 2026-01-02T09:59, which is before "
                                             "asked_on 2026-01-02T10:00."));
    CHECK(completedAt("2026-01-01").size() == 1);
}

TEST_CASE("A calibration is not due before it was made")
{
    ProjectBuilder project;
    const auto tool = project.add(Tool{.name = "Torque wrench"});
    project.change(tool, [](Tool &t) {
        t.calibrations = {{on("2025-01-02"), on("2025-01-02")},
                          {on("2026-01-02"), on("2026-01-01")}};
    });
    CHECK(wrongs(project) == Said{"Tool 2 “Torque wrench” has due_on 2026-01-01, which is before "
                                  "calibrated_on 2026-01-02."});
}

TEST_CASE("Dates of a withdrawn record are left alone")
{
    ProjectBuilder project;
    const auto id = project.deviation(project.part("Wing"), "2026-01-05");
    project.change(id, [](Deviation &d) { d.asked_on = on("2026-01-01"); });
    CHECK(wrongs(project).size() == 1);
    project.withdraw(id);
    CHECK(wrongs(project).empty());
}
