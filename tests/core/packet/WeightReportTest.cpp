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
    weighing.scale_readings = {
        {"left", 150, 0, 1800, {}}, {"right", 152, 2, 1800, {}}, {"tail", 40, 0, 5600, {}}};
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
    CHECK_FALSE(report.scales[0].was_uncalibrated);
    project.change(weighing.scale_readings[0].tool_id,
                   [](Tool &tool) { tool.needs_calibration = true; });
    const auto needed = weightReport(project.records, project.profile, on("2026-05-01"));
    CHECK(needed.scales[0].was_uncalibrated);
    CHECK_FALSE(needed.scales[1].was_uncalibrated);
    REQUIRE(report.cases.size() == 1);
    CHECK(report.cases[0].sum.weight == 460);
    CHECK(report.cases[0].is_within == false);
    CHECK(report.casesOutside() == 1);
    CHECK(report.extremesOutside() == 2);
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
    CHECK(report.effects[0].weighed == WeightReport::Weighed::In);
    CHECK(*report.effects[0].weight == Approx(0.90718474));
    CHECK(report.effects[1].weighed == WeightReport::Weighed::NotIn);
    CHECK(report.effects[2].title == "Heavier bracket");
    CHECK_FALSE(report.effects[2].weight);
    project.withdraw(known);
    CHECK(weightReport(project.records, project.profile, on("2026-05-01")).effects.size() == 2);
}

TEST_CASE("While nothing was weighed no deviation is said to be weighed")
{
    test::ProjectBuilder project;
    const auto id = project.deviation(project.part("Fin"), "2026-01-02");
    project.change(id, [](Deviation &deviation) {
        deviation.weight_change = 2;
        deviation.weight_unit = WeightUnit::Kilograms;
        deviation.built_on = on("2026-02-01");
    });
    const auto before = weightReport(project.records, project.profile, on("2026-05-01"));
    REQUIRE(before.effects.size() == 1);
    CHECK(before.effects[0].weighed == WeightReport::Weighed::NotYet);
    // A weighing still to come weighs nothing yet.
    const auto weighing = project.add(weighingOn("2026-06-01"));
    CHECK(weightReport(project.records, project.profile, on("2026-05-01")).effects[0].weighed ==
          WeightReport::Weighed::NotYet);
    CHECK(weightReport(project.records, project.profile, on("2026-06-01")).effects[0].weighed ==
          WeightReport::Weighed::In);
    project.withdraw(weighing);
    CHECK(weightReport(project.records, project.profile, on("2026-06-01")).effects[0].weighed ==
          WeightReport::Weighed::NotYet);
}

TEST_CASE("A loading above the maximum weight is outside, also where the envelope goes higher")
{
    test::ProjectBuilder project;
    project.add(weighingOn("2026-03-01"));
    Envelope envelope;
    envelope.points = {{300, 2100}, {600, 2100}, {600, 2300}, {300, 2300}};
    project.add(envelope);
    LoadingCase loading;
    loading.name = "heavy";
    // 340 and 120, with the centre of gravity at (764,000 + 120 x 2,250) / 460 = 2,247.8.
    loading.items = {{"Pilot", 120, 2250}};
    project.add(loading);
    const auto within = [&](double most, WeightUnit unit) {
        project.records.project.maximum_weight = most;
        project.records.project.weight_unit = unit;
        return weightReport(project.records, project.profile, on("2026-05-01")).cases[0].is_within;
    };
    CHECK(within(450, WeightUnit::Kilograms) == false);
    CHECK(within(460, WeightUnit::Kilograms) == true);
    CHECK(within(460 / 0.45359237, WeightUnit::Pounds) == true);
    CHECK(within(1014, WeightUnit::Pounds) == false);
}

TEST_CASE("Equipment since the weighing without weight or arm is named as not in the sum")
{
    test::ProjectBuilder project;
    project.add(weighingOn("2026-03-01"));
    Equipment radio;
    radio.name = "Radio";
    radio.weight = 2;
    radio.weight_unit = WeightUnit::Kilograms;
    radio.fitted_on = on("2026-03-05");
    const auto id = project.add(radio);
    radio.name = "Weighed with it";
    radio.fitted_on = on("2026-02-05");
    project.add(radio);
    const auto report = weightReport(project.records, project.profile, on("2026-05-01"));
    REQUIRE(report.not_in_sum.size() == 1);
    CHECK(report.not_in_sum[0].name == "Radio");
    CHECK(report.not_in_sum[0].weight == 2);
    CHECK_FALSE(report.not_in_sum[0].arm);
    CHECK(report.empty->sum.weight == 340);
    project.change(id, [](Equipment &known) {
        known.arm = 1000;
        known.arm_unit = ArmUnit::Millimetres;
    });
    const auto then = weightReport(project.records, project.profile, on("2026-05-01"));
    CHECK(then.not_in_sum.empty());
    CHECK(then.empty->sum.weight == 342);
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
