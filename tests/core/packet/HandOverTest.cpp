// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/HandOver.h"

#include "core/readiness/Readiness.h"
#include "tests/support/WingProject.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using lastrivet::test::WingProject;

TEST_CASE("The hours of a hand-over book are of what had begun by its moment, as all of it is")
{
    const WingProject project;
    const auto bookBy = [&](Moment asOf) {
        return packet::handOver(project.records, project.profile,
                                readiness::readiness(project.records, project.profile, asOf));
    };
    const auto first = WingProject::at("2026-02-26");
    const auto early = bookBy(first);
    CHECK(early.total == Minutes{45});
    CHECK(early.first_work == first);
    CHECK(early.last_work == first);
    const auto whole = bookBy(project.as_of);
    CHECK(whole.total == Minutes{195});
    CHECK(whole.worker_total == Minutes{255});
    CHECK(whole.last_work == WingProject::at("2026-02-28T18:00"));
    const auto before = bookBy(WingProject::at("2026-02-25"));
    CHECK(before.hours.empty());
    CHECK_FALSE(before.last_work.has_value());
}

TEST_CASE("A hand-over book holds the weighing that was there at its moment")
{
    WingProject project;
    Weighing weighing;
    weighing.id = Id<Weighing>{1};
    weighing.weighed_on = WingProject::at("2026-02-10");
    weighing.scale_readings = {
        {"left", 150, 0, 1800, {}}, {"right", 152, 2, 1800, {}}, {"tail", 40, 0, 5600, {}}};
    project.records.weighings.put(weighing);
    const auto bookBy = [&](const char *day) {
        return packet::handOver(
            project.records, project.profile,
            readiness::readiness(project.records, project.profile, WingProject::at(day)));
    };
    CHECK_FALSE(bookBy("2026-02-09").weight.empty);
    CHECK_FALSE(bookBy("2026-02-09").hasWeight());
    const auto weighed = bookBy("2026-02-10");
    CHECK(weighed.hasWeight());
    REQUIRE(weighed.weight.empty);
    CHECK(weighed.weight.empty->sum.weight == 340);
}

TEST_CASE("Equipment stands in a hand-over book as it was at its moment")
{
    WingProject project;
    Equipment radio;
    radio.id = Id<Equipment>{1};
    radio.name = "Radio";
    radio.fitted_on = WingProject::at("2026-02-02");
    radio.removed_on = WingProject::at("2026-02-20");
    project.records.equipment.put(radio);
    const auto equipmentBy = [&](const char *day) {
        return packet::handOver(
                   project.records, project.profile,
                   readiness::readiness(project.records, project.profile, WingProject::at(day)))
            .equipment;
    };
    CHECK(equipmentBy("2026-02-01").empty());
    const auto fitted = equipmentBy("2026-02-10");
    REQUIRE(fitted.size() == 1);
    CHECK(fitted[0].fitted_on == radio.fitted_on);
    CHECK_FALSE(fitted[0].removed_on.has_value());
    const auto removed = equipmentBy("2026-02-20");
    REQUIRE(removed.size() == 1);
    CHECK(removed[0].removed_on == radio.removed_on);
}
