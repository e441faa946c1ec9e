// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/WeightReport.h"

#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::packet;
using test::on;

namespace {

Weighing weighingOn(std::string_view day)
{
    Weighing weighing;
    weighing.weighed_on = on(day);
    weighing.scale_readings = {{"left", 150, 0, 1800, {}},
                               {"right", 152, 2, 1800, {}},
                               {"tail", 40, 0, 5600, {}}};
    return weighing;
}

} // namespace

TEST_CASE("The weight report holds scales with their calibration, loadings and both extremes")
{
    test::ProjectBuilder project;
    Tool scale;
    scale.name = "Scale A";
    scale.serial_number = "17";
    scale.calibrations = {{on("2025-01-01"), on("2026-01-01"), {}},
                          {on("2026-04-01"), on("2027-04-01"), {}}};
    auto weighing = weighingOn("2026-03-01");
    weighing.scale_readings[0].tool_id = project.add(scale);
    project.add(weighing);
    Envelope envelope;
    envelope.points = {{300, 2100}, {600, 2100}, {600, 2300}, {300, 2300}};
    envelope.lemac = 2000;
    envelope.mac = 1000;
    project.add(envelope);
    LoadingCase loading;
    loading.name = "full";
    loading.items = {{"Pilot", 90, 2400}, {"Baggage", 30, 3200}};
    project.add(loading);
    const auto report = weightReport(project.records, project.profile, on("2026-05-01"));
    REQUIRE(report.empty);
    CHECK(report.empty->sum.weight == 340);
    // (300 x 1,800 + 40 x 5,600) / 340.
    CHECK(report.empty->sum.cg == Approx(764000.0 / 340));
    CHECK(*report.percent_mac == Approx((764000.0 / 340 - 2000) / 10));
    // On the day of the weighing the second calibration was still to come.
    CHECK(report.scales[0].tool == "Scale A, 17");
    CHECK(report.scales[0].calibrated_until == on("2026-01-01"));
    REQUIRE(report.cases.size() == 1);
    CHECK(report.cases[0].sum.weight == 460);
    CHECK(report.cases[0].is_within == false);
    REQUIRE(report.extremes);
    CHECK(report.extremes->aft.sum.weight == 460);
    CHECK(report.aft_is_within == false);
    // One loading alone says that pilot and baggage are aboard always.
    CHECK(report.extremes->forward.sum.weight == 460);
}

TEST_CASE("What changed the weight is told apart by whether a scale has seen it")
{
    test::ProjectBuilder project;
    project.add(weighingOn("2026-03-01"));
    const auto part = project.part("Fin");
    for (const auto *built : {"2026-02-01", "2026-03-05", "2026-09-01"}) {
        const auto id = project.deviation(part, "2026-01-02");
        project.change(id, [&](Deviation &deviation) {
            deviation.title = built;
            deviation.weight_change = 2;
            deviation.weight_unit = WeightUnit::Pounds;
            deviation.built_on = on(built);
        });
    }
    Bulletin bulletin;
    bulletin.title = "Heavier bracket";
    bulletin.complied_on = on("2026-03-09");
    bulletin.basis = "Bracket changed";
    const auto known = project.add(bulletin);
    bulletin.title = "Not for this aeroplane";
    bulletin.applies = false;
    project.add(bulletin);
    const auto report = weightReport(project.records, project.profile, on("2026-05-01"));
    REQUIRE(report.effects.size() == 3);
    CHECK(report.effects[0].title == "2026-02-01");
    CHECK_FALSE(report.effects[0].is_after);
    CHECK(*report.effects[0].weight == Approx(0.90718474));
    CHECK(report.effects[1].is_after);
    CHECK(report.effects[2].title == "Heavier bracket");
    CHECK_FALSE(report.effects[2].weight);
    project.withdraw(known);
    CHECK(weightReport(project.records, project.profile, on("2026-05-01")).effects.size() == 2);
}

TEST_CASE("Before the weighing the report says so, and a loading stands for itself")
{
    test::ProjectBuilder project;
    LoadingCase loading;
    loading.name = "estimate";
    loading.items = {{"Empty, estimated", 342, 1752}, {"Pilot", 84, 1890}};
    project.add(loading);
    const auto report = weightReport(project.records, project.profile, on("2026-05-01"));
    CHECK(report.refusal);
    CHECK_FALSE(report.weighing);
    CHECK_FALSE(report.extremes);
    REQUIRE(report.cases.size() == 1);
    CHECK(report.cases[0].sum.weight == 426);
    CHECK_FALSE(report.cases[0].is_within);
    // A weighing that cannot be is told, and nothing is built on it.
    auto wrong = weighingOn("2026-03-01");
    wrong.scale_readings[2].tare = 50;
    project.add(wrong);
    const auto then = weightReport(project.records, project.profile, on("2026-05-01"));
    CHECK(english(*then.refusal).find("below its tare") != std::string::npos);
    CHECK(then.weighing);
    CHECK_FALSE(then.empty);
}
