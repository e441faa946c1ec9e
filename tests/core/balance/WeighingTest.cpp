// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/balance/EmptyWeight.h"
#include "core/balance/Loading.h"
#include "core/balance/Numbers.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

#include <random>
#include <vector>

using namespace lastrivet;
using namespace lastrivet::balance;
using test::on;

namespace {

/// FAA-H-8083-30 chapter 4 fig. 4-20: three scales with tare, fuel taken off, unusable fuel added.
Weighing handbookWeighing()
{
    Weighing weighing;
    weighing.weighed_on = on("2026-05-01");
    weighing.weight_unit = WeightUnit::Pounds;
    weighing.arm_unit = ArmUnit::Inches;
    weighing.scale_readings = {
        {"left main", 650, 5, 70, {}}, {"right main", 640, 5, 70, {}}, {"nose", 225, 2.5, -30, {}}};
    weighing.corrections = {{"fuel, 30 gal of 5.9 lb", -177, 95}, {"unusable fuel", 6, 98}};
    return weighing;
}

Equipment radio(std::optional<double> kilograms)
{
    Equipment made;
    made.name = "Radio";
    made.weight = kilograms;
    made.weight_unit = WeightUnit::Kilograms;
    made.arm = 1000;
    made.arm_unit = ArmUnit::Millimetres;
    return made;
}

/// The extreme over a grid of amounts: slow and plain.
double farthestOnGrid(const Item &empty, const std::vector<Load> &loads, double most, double sign,
                      std::size_t from = 0)
{
    const double cg = empty.arm;
    if (from == loads.size())
        return empty.weight <= most + 1e-9 ? sign * cg : -1e300;
    double farthest = -1e300;
    constexpr int steps = 12;
    for (int i = 0; i <= steps; ++i) {
        const auto &load = loads[from];
        const double weight = load.least + (load.most - load.least) * i / steps;
        const Item more{"", empty.weight + weight,
                        (empty.weight * empty.arm + weight * load.arm) / (empty.weight + weight)};
        farthest = std::max(farthest, farthestOnGrid(more, loads, most, sign, from + 1));
    }
    return farthest;
}

} // namespace

TEST_CASE(
    "Numbers that were typed in other units are converted to those of their record, all of them")
{
    Weighing weighing = handbookWeighing();
    const auto typed = numbersOf(weighing);
    CHECK(typed.weights == std::vector<double>{650, 5, 640, 5, 225, 2.5, -177, 6});
    CHECK(typed.arms == std::vector<double>{70, 70, -30, 95, 98});
    weighing.weight_unit = WeightUnit::Kilograms;
    convertNumbers(weighing, typed.units);
    CHECK(weighing.scale_readings[0].reading == Approx(650 * 0.45359237));
    CHECK(weighing.scale_readings[2].tare == Approx(2.5 * 0.45359237));
    CHECK(weighing.corrections[0].weight == Approx(-177 * 0.45359237));
    CHECK(numbersOf(weighing).arms == typed.arms);

    LoadingCase loading;
    loading.items = {{"pilot", 80, 1000}};
    loading.arm_unit = ArmUnit::Inches;
    convertNumbers(loading, {});
    CHECK(numbersOf(loading).weights == std::vector<double>{80});
    CHECK(loading.items[0].arm == Approx(1000 / 25.4));

    Envelope envelope;
    envelope.points = {{600, 1700}};
    envelope.mac = 1300;
    envelope.arm_unit = ArmUnit::Inches;
    convertNumbers(envelope, {});
    CHECK(envelope.points[0].weight == 600);
    CHECK(envelope.points[0].arm == Approx(1700 / 25.4));
    CHECK(*envelope.mac == Approx(1300 / 25.4));
    CHECK_FALSE(envelope.lemac.has_value());
}

TEST_CASE("Of equipment the numbers that have a unit are converted")
{
    Equipment battery;
    battery.weight = 22;
    battery.arm = 70;
    battery.arm_unit = ArmUnit::Inches;
    CHECK(numbersOf(battery).weights.empty());
    CHECK(numbersOf(battery).arms == std::vector<double>{70});
    CHECK(numbersOf(battery, {WeightUnit::Pounds, ArmUnit::Millimetres}).units ==
          Units{WeightUnit::Pounds, ArmUnit::Inches});
    battery.arm_unit = ArmUnit::Millimetres;
    convertNumbers(battery, {WeightUnit::Pounds, ArmUnit::Inches});
    CHECK(*battery.weight == 22);
    CHECK(*battery.arm == Approx(70 * 25.4));
}

TEST_CASE("A weighing on three scales comes to the handbook's empty weight")
{
    const auto empty = weighed(handbookWeighing());
    REQUIRE(empty);
    CHECK(empty->sum.weight == 1331.5);
    CHECK(empty->sum.moment == 66698);
    CHECK(empty->lines.size() == 5);
    CHECK(empty->units == Units{WeightUnit::Pounds, ArmUnit::Inches});
}

TEST_CASE("A weighing that cannot be is refused in one sentence")
{
    auto weighing = handbookWeighing();
    weighing.scale_readings[1].tare = -5;
    CHECK(english(weighed(weighing).reason()).find("right main is below zero") !=
          std::string::npos);
    weighing.scale_readings[1].tare = 700;
    CHECK(english(weighed(weighing).reason()).find("below its tare") != std::string::npos);
    weighing.scale_readings.clear();
    CHECK_FALSE(weighed(weighing));
    weighing = handbookWeighing();
    weighing.corrections.push_back({"a mistake", -5000, 10});
    CHECK_FALSE(weighed(weighing));
}

TEST_CASE("Equipment fitted and removed after the weighing is reckoned in, in the weighing's units")
{
    test::ProjectBuilder project;
    CHECK_FALSE(emptyWeight(project.records, on("2026-06-01")));
    project.add(handbookWeighing());
    auto fitted = radio(2);
    fitted.fitted_on = on("2026-05-02");
    const auto id = project.add(fitted);
    auto before = radio(7);
    before.fitted_on = on("2026-04-30");
    project.add(before);
    auto unknown = radio(std::nullopt);
    unknown.fitted_on = on("2026-05-03");
    const auto weightless = project.add(unknown);
    const auto then = emptyWeight(project.records, on("2026-05-02"));
    REQUIRE(then);
    CHECK(then->sum.weight == Approx(1331.5 + 2 / 0.45359237));
    CHECK(then->sum.moment == Approx(66698 + 2 / 0.45359237 * 1000 / 25.4));
    CHECK(then->without_weight.empty());
    CHECK(emptyWeight(project.records, on("2026-05-01"))->sum.weight == 1331.5);
    project.change(id, [](Equipment &equipment) { equipment.removed_on = on("2026-05-09"); });
    const auto later = emptyWeight(project.records, on("2026-05-10"));
    CHECK(later->sum.weight == Approx(1331.5));
    CHECK(later->lines.back().kind == Line::Kind::Removed);
    CHECK(later->without_weight == std::vector{weightless});
}

TEST_CASE("Withdrawn equipment weighs nothing, and what has no weight is named once")
{
    test::ProjectBuilder project;
    project.add(handbookWeighing());
    auto fitted = radio(2);
    fitted.fitted_on = on("2026-05-02");
    project.withdraw(project.add(fitted));
    auto unknown = radio(std::nullopt);
    unknown.fitted_on = on("2026-05-03");
    unknown.removed_on = on("2026-05-09");
    const auto weightless = project.add(unknown);
    const auto empty = emptyWeight(project.records, on("2026-06-01"));
    REQUIRE(empty);
    CHECK(empty->sum.weight == 1331.5);
    CHECK(empty->without_weight == std::vector{weightless});
}

TEST_CASE("A scale that shows nothing but its tare carries nothing")
{
    auto weighing = handbookWeighing();
    const double before = weighed(weighing)->sum.weight;
    weighing.scale_readings.push_back({"tail", 5, 5, 200});
    const auto empty = weighed(weighing);
    REQUIRE(empty);
    CHECK(empty->sum.weight == before);
}

TEST_CASE("The latest weighing counts, and no withdrawn one")
{
    test::ProjectBuilder project;
    project.add(handbookWeighing());
    auto second = handbookWeighing();
    second.weighed_on = on("2026-05-20");
    second.scale_readings[0].reading = 700;
    const auto id = project.add(second);
    CHECK(emptyWeight(project.records, on("2026-06-01"))->weighing == id);
    CHECK(emptyWeight(project.records, on("2026-05-19"))->weighing != id);
    project.withdraw(id);
    CHECK(emptyWeight(project.records, on("2026-06-01"))->sum.weight == 1331.5);
}

TEST_CASE("Of weighings of one day, timed and not, the greatest id that no other is after counts")
{
    test::ProjectBuilder project;
    const auto weighedOn = [&](std::string_view moment) {
        auto weighing = handbookWeighing();
        weighing.weighed_on = on(moment);
        return project.add(weighing);
    };
    weighedOn("2026-05-01T15:00");
    const auto undated = weighedOn("2026-05-01");
    weighedOn("2026-05-01T09:00");
    CHECK(latestWeighing(project.records, on("2026-06-01"))->id == undated);
}

TEST_CASE("Built deviations that change the weight are listed")
{
    test::ProjectBuilder project;
    const auto part = project.part("Fin");
    const auto id = project.deviation(part, "2026-05-02");
    project.deviation(part, "2026-05-03");
    project.change(id, [](Deviation &deviation) {
        deviation.weight_change = 0.4;
        deviation.built_on = on("2026-05-04");
    });
    const auto effects = weightEffects(project.records, on("2026-06-01"));
    REQUIRE(effects.size() == 1);
    CHECK(effects.front().record == RecordRef{RecordType::Deviation, id.value()});
    CHECK(weightEffects(project.records, on("2026-05-03")).empty());
    project.change(id, [](Deviation &deviation) { deviation.undone_on = on("2026-05-20"); });
    CHECK(weightEffects(project.records, on("2026-05-19")).size() == 1);
    CHECK(weightEffects(project.records, on("2026-05-20")).empty());
    project.withdraw(id);
    CHECK(weightEffects(project.records, on("2026-05-19")).empty());
}

TEST_CASE("The extremes of AC 43.13-1B figures 10-10 and 10-11 are found by search")
{
    // Empty with oil and pilot; fuel from its minimum of 83 lb to 240 lb, rear passengers, baggage.
    const Item empty{"empty, oil and pilot", 1169 + 17 + 170,
                     (1169 * 10.6 - 17 * 49.0 + 170 * 16) / (1169 + 17 + 170)};
    const std::vector<Load> loads{
        {"fuel", 83, 240, 22}, {"rear", 0, 340, 48}, {"baggage", 0, 100, 75.5}};
    const auto found = extremes(empty, loads, 2100);
    REQUIRE(found);
    CHECK(found->forward.sum.weight == Approx(1439));
    CHECK(found->forward.sum.cg == Approx(11.2).margin(0.05));
    CHECK(found->aft.sum.weight == Approx(2036));
    CHECK(found->aft.sum.cg == Approx(21.3).margin(0.05));
}

TEST_CASE("No loading on a grid lies beyond the extremes")
{
    std::mt19937 random(20260501);
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    for (int round = 0; round < 60; ++round) {
        const Item empty{"empty", between(300, 900), between(-50, 50)};
        std::vector<Load> loads;
        double least = empty.weight;
        for (int i = 0; i < 4; ++i) {
            const double first = round % 3 == 0 ? between(0, 40) : 0;
            loads.push_back({"load", first, first + between(0, 200), between(-150, 150)});
            least += first;
        }
        const double most = least + between(0, 500);
        const auto found = extremes(empty, loads, most);
        REQUIRE(found);
        for (const double sign : {-1.0, 1.0}) {
            const auto &loading = sign > 0 ? found->aft : found->forward;
            CHECK(loading.sum.weight <= most + 1e-6);
            CHECK(sign * loading.sum.cg >= farthestOnGrid(empty, loads, most, sign) - 1e-9);
        }
    }
}

TEST_CASE("Loads that cannot be, and least loads that are too heavy, are refused")
{
    const Item empty{"empty", 500, 10};
    CHECK_FALSE(extremes(empty, std::vector<Load>{{"fuel", 0, -1, 5}}, 700));
    CHECK_FALSE(extremes(empty, std::vector<Load>{{"pilot", 300, 300, 5}}, 700));
    // As heavy as is allowed, and no more, is allowed.
    CHECK(extremes(empty, std::vector<Load>{{"pilot", 200, 200, 5}}, 700)->aft.sum.weight == 700);
    CHECK_FALSE(extremes({"empty", 0, 10}, {}, 700));
}

TEST_CASE("An envelope holds its edge, and converts units")
{
    Envelope envelope;
    envelope.weight_unit = WeightUnit::Pounds;
    envelope.arm_unit = ArmUnit::Inches;
    envelope.points = {{1000, 80}, {1600, 80}, {1600, 86}, {1000, 90}};
    const Units own{WeightUnit::Pounds, ArmUnit::Inches};
    CHECK(isWithin(envelope, 1300, 83, own));
    CHECK(isWithin(envelope, 1600, 80, own));
    CHECK(isWithin(envelope, 1300, 88, own));
    CHECK_FALSE(isWithin(envelope, 1300, 88.1, own));
    CHECK_FALSE(isWithin(envelope, 1601, 83, own));
    const Units metric{WeightUnit::Kilograms, ArmUnit::Millimetres};
    CHECK(isWithin(envelope, 1300 * 0.45359237, 83 * 25.4, metric));
    CHECK(isWithin(envelope, 1600 * 0.45359237, 80 * 25.4, metric));
    CHECK_FALSE(isWithin(envelope, 1300, 83, metric));
    envelope.points.resize(2);
    CHECK_FALSE(isWithin(envelope, 1300, 80, own));
}

TEST_CASE("An envelope holds its corner, whatever conversion adds to it")
{
    Envelope envelope;
    envelope.weight_unit = WeightUnit::Kilograms;
    envelope.arm_unit = ArmUnit::Millimetres;
    envelope.points = {{400, 1800}, {600, 1800}, {600, 2000}, {400, 2000}};
    const Units metric{WeightUnit::Kilograms, ArmUnit::Millimetres};
    CHECK(isWithin(envelope, 600 + 5e-11, 2000, metric));
    CHECK(isWithin(envelope, 600 + 5e-11, 2000 + 5e-11, metric));
    CHECK(isWithin(envelope, 400 - 5e-11, 1800 - 5e-11, metric));
    CHECK_FALSE(isWithin(envelope, 600.001, 2000, metric));
    CHECK_FALSE(isWithin(envelope, 600, 2000.001, metric));
}
