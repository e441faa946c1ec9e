// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/CorrectionsReport.h"

#include "tests/support/WingProject.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using lastrivet::test::WingProject;
using State = packet::SquawkEntry::State;

namespace {

constexpr Id<Inspection> visit{1};

void hold(WingProject &project)
{
    Inspection held = *project.records.find(visit);
    held.held_on = WingProject::at("2026-02-01");
    held.asked_on = WingProject::at("2026-01-20");
    project.records.inspections.put(held);
    for (const auto number : {"10", "9"})
        project.records.squawks.put({.id = Id<Squawk>{std::stoll(number)},
                                     .number = number,
                                     .component_id = project.rib,
                                     .title = "Finding " + std::string(number),
                                     .found_on = held.held_on,
                                     .inspection_id = visit,
                                     .finding_number = number});
}

std::vector<std::string> titles(const std::vector<const Media *> &media)
{
    std::vector<std::string> captions;
    for (const Media *entry : media)
        captions.push_back(entry->caption);
    return captions;
}

} // namespace

TEST_CASE("A visit that is not held has no corrections report")
{
    WingProject project;
    CHECK_FALSE(packet::correctionsReport(project.records, project.profile, visit, project.as_of));
    hold(project);
    CHECK(packet::correctionsReport(project.records, project.profile, visit, project.as_of));
    CHECK_FALSE(packet::correctionsReport(project.records, project.profile, visit,
                                          WingProject::at("2026-01-31")));
}

TEST_CASE("Findings stand by their number on the sheet, with what became of them")
{
    WingProject project;
    hold(project);
    const auto report =
        packet::correctionsReport(project.records, project.profile, visit, project.as_of);
    REQUIRE(report);
    REQUIRE(report->findings.size() == 3);
    CHECK(report->findings[0].squawk.finding_number == "9");
    CHECK(report->findings[1].squawk.finding_number == "10");
    const auto &fixed = report->findings[2];
    CHECK(fixed.squawk.state == State::Fixed);
    CHECK(fixed.squawk.correction == "Drilled out and replaced");
    CHECK(fixed.squawk.fixed_by == "Berta Builder");
    CHECK(report->openCount() == 3);
    CHECK(report->correctedCount() == 1);
    CHECK(report->visit.inspector == "Ines Inspector");
}

TEST_CASE("Verification of a later day is not in a report of an earlier one")
{
    WingProject project;
    hold(project);
    Squawk squawk = *project.records.find(Id<Squawk>{1});
    squawk.verified_on = WingProject::at("2026-03-13");
    squawk.verified_by = project.inspector;
    project.records.squawks.put(squawk);
    const auto openAt = [&](std::string_view day) {
        return packet::correctionsReport(project.records, project.profile, visit,
                                         WingProject::at(day))
            ->openCount();
    };
    CHECK(openAt("2026-03-12") == 3);
    CHECK(openAt("2026-03-13") == 2);
}

TEST_CASE("Pictures are before or after by what they show, else by the day of the correction")
{
    const WingProject project;
    Squawk squawk = *project.records.find(Id<Squawk>{1});
    auto pictures = packet::beforeAndAfter(project.records, squawk);
    // Taken on the day of the correction, it shows what the correction came to.
    CHECK(titles(pictures.after) == std::vector<std::string>{"Rib 3 as found", "Rib 3 repaired"});
    squawk.fixed_on = WingProject::at("2026-02-11");
    pictures = packet::beforeAndAfter(project.records, squawk);
    CHECK(titles(pictures.before) == std::vector<std::string>{"Rib 3 as found"});
    CHECK(titles(pictures.after) == std::vector<std::string>{"Rib 3 repaired"});
    squawk.fixed_on.reset();
    pictures = packet::beforeAndAfter(project.records, squawk);
    CHECK(titles(pictures.before) == std::vector<std::string>{"Rib 3 as found"});
}
