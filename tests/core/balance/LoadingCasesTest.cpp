// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/balance/Loading.h"
#include "core/balance/Written.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

#include <random>

using namespace lastrivet;
using namespace lastrivet::balance;

namespace {

constexpr Units metric{WeightUnit::Kilograms, ArmUnit::Millimetres};
constexpr Units imperial{WeightUnit::Pounds, ArmUnit::Inches};

LoadingCase loadingOf(std::string_view name, std::vector<LoadingCase::Item> items)
{
    LoadingCase loading;
    loading.name = name;
    loading.items = std::move(items);
    return loading;
}

} // namespace

TEST_CASE("What all loadings name is at least aboard as little as in any, the rest may be left out")
{
    test::ProjectBuilder project;
    CHECK(loadsOf(project.records, metric).empty());
    project.add(loadingOf("alone", {{"Pilot", 70, 1900}, {"Fuel", 15, 1850}}));
    project.add(loadingOf("full", {{"Fuel", 62, 1850},
                                   {"Pilot", 95, 1900},
                                   {"Baggage", 12, 2460},
                                   {"Baggage", 8, 2460},
                                   {"Baggage", 5, 2600}}));
    const auto withdrawn = project.add(loadingOf("wrong", {{"Anvil", 500, 0}}));
    project.withdraw(withdrawn);
    const auto loads = loadsOf(project.records, metric);
    REQUIRE(loads.size() == 4);
    CHECK(loads[0].what == "Pilot");
    CHECK((loads[0].least == 70 && loads[0].most == 95));
    CHECK((loads[1].least == 15 && loads[1].most == 62));
    // Two lines of one thing at one arm are one load; at another arm it is another load.
    CHECK((loads[2].least == 0 && loads[2].most == 20 && loads[2].arm == 2460));
    CHECK((loads[3].least == 0 && loads[3].most == 5 && loads[3].arm == 2600));
}

TEST_CASE("The least of a load is the least of all loadings, whichever comes first")
{
    test::ProjectBuilder project;
    project.add(loadingOf("heavy", {{"Pilot", 95, 1900}}));
    project.add(loadingOf("light", {{"Pilot", 55, 1900}}));
    project.add(loadingOf("usual", {{"Pilot", 80, 1900}}));
    const auto loads = loadsOf(project.records, metric);
    REQUIRE(loads.size() == 1);
    CHECK((loads[0].least == 55 && loads[0].most == 95));
}

TEST_CASE("Loadings in other units are converted before they are compared")
{
    test::ProjectBuilder project;
    project.add(loadingOf("metric", {{"Pilot", 80, 1905}}));
    auto pounds = loadingOf("imperial", {{"Pilot", 200, 75}});
    pounds.weight_unit = WeightUnit::Pounds;
    pounds.arm_unit = ArmUnit::Inches;
    project.add(pounds);
    const auto loads = loadsOf(project.records, metric);
    // 75 in are 1,905 mm, and 200 lb are 90.718474 kg.
    REQUIRE(loads.size() == 1);
    CHECK(loads[0].least == 80);
    CHECK(loads[0].most == Approx(90.718474));
    CHECK(loadsOf(project.records, imperial)[0].arm == Approx(75));
}

TEST_CASE("A loading is summed up on the empty aeroplane, and by itself before the weighing")
{
    std::mt19937 random(11);
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    for (int round = 0; round < 40; ++round) {
        const Item empty{"", between(200, 600), between(1500, 1900)};
        LoadingCase loading;
        double weight = 0;
        double moment = 0;
        for (int i = 0; i < 5; ++i) {
            loading.items.push_back({"load", between(0, 120), between(500, 2600)});
            weight += loading.items.back().weight;
            moment += loading.items.back().weight * loading.items.back().arm;
        }
        const auto alone = loaded(nullptr, loading, std::nullopt, metric);
        REQUIRE(alone);
        CHECK(alone->cg == Approx(moment / weight));
        const auto sum = loaded(&empty, loading, Chord{1400, 1300}, metric);
        REQUIRE(sum);
        const double cg = (moment + empty.weight * empty.arm) / (weight + empty.weight);
        CHECK(sum->weight == Approx(weight + empty.weight));
        CHECK(sum->cg == Approx(cg));
        CHECK(*sum->percent_mac == Approx((cg - 1400) / 13));
    }
    CHECK_FALSE(loaded(nullptr, LoadingCase{}, std::nullopt, metric));
}

TEST_CASE("The latest limits hold, and only a chord with a length counts")
{
    test::ProjectBuilder project;
    CHECK_FALSE(envelopeOf(project.records));
    Envelope envelope;
    envelope.lemac = 1400;
    envelope.mac = 0;
    project.add(envelope);
    CHECK_FALSE(chordOf(*envelopeOf(project.records), metric));
    envelope.mac = 1270;
    const auto second = project.add(envelope);
    CHECK(chordOf(*envelopeOf(project.records), imperial)->length == Approx(50));
    project.withdraw(second);
    CHECK(envelopeOf(project.records)->mac == 0);
    CHECK_FALSE(mostWeight(project.records, metric));
    project.records.project.maximum_weight = 1320;
    project.records.project.weight_unit = WeightUnit::Pounds;
    // 1,320 lb are 598.74193 kg.
    CHECK(*mostWeight(project.records, metric) == Approx(598.74193).epsilon(1e-6));
}

TEST_CASE("A unit behind a number in a field with a unit is that one, or it is asked about")
{
    CHECK(*readWeightIn("9,7 lb", WeightUnit::Pounds) == 9.7);
    CHECK(*readWeightIn("9.7lbs.", WeightUnit::Pounds) == 9.7);
    CHECK(*readWeightIn("9.7", std::nullopt) == 9.7);
    CHECK(*readArmIn("68.9\"", ArmUnit::Inches) == 68.9);
    CHECK(*readArmIn("1750 mm", ArmUnit::Millimetres) == 1750);
    CHECK(english(readWeightIn("9,7 lb", WeightUnit::Kilograms).reason()) ==
          "“9,7 lb” is not in kg: write it in kg, or choose the other unit first.");
    CHECK(english(readArmIn("1,75 m", ArmUnit::Millimetres).reason()) ==
          "“1,75 m” is not in mm: write it in mm, or choose the other unit first.");
    CHECK(english(readWeightIn("9,7 lb", std::nullopt).reason()) ==
          "“9,7 lb”: choose the unit first, and write the number alone or in it.");
    CHECK(english(readWeightIn("9,7 mm", WeightUnit::Kilograms).reason()) ==
          "“9,7 mm” is no weight; write it as 84, 84 kg or 185 lb.");
}

TEST_CASE(
    "Weights and arms are read in the unit that is written, and never in one of something else")
{
    CHECK(*readWeight("84", WeightUnit::Kilograms) == 84);
    CHECK(*readWeight("84,5 kg", WeightUnit::Kilograms) == 84.5);
    CHECK(*readWeight("185 lb", WeightUnit::Kilograms) == Approx(83.914588));
    CHECK(*readWeight("-177", WeightUnit::Pounds) == -177);
    CHECK(*readArm("68.9 in", ArmUnit::Millimetres) == Approx(1750.06));
    CHECK(*readArm("1,75 m", ArmUnit::Millimetres) == Approx(1750));
    CHECK(*readWeight("84\xE2\x80\xAFkg", WeightUnit::Kilograms) == 84);
    CHECK(*readWeight("185 LBS", WeightUnit::Kilograms) == Approx(83.914588));
    CHECK(*readArm("1 850 mm", ArmUnit::Millimetres) == 1850);
    CHECK_FALSE(readWeight("84 5", WeightUnit::Kilograms));
    CHECK_FALSE(readArm("48 1/2", ArmUnit::Inches));
    // A thousand or a decimal: nobody can tell.
    CHECK_FALSE(readArm("1,850", ArmUnit::Millimetres));
    CHECK_FALSE(readArm("1,851.6", ArmUnit::Millimetres));
    CHECK(*readArm("175 cm", ArmUnit::Inches) == Approx(68.897638));
    CHECK(english(readWeight("13 stone", WeightUnit::Kilograms).reason()).find("“13 stone”") !=
          std::string::npos);
    for (const auto *wrong : {"", "kg", "84 mm", "1e5", "nan", "eighty"})
        CHECK_FALSE(readWeight(wrong, WeightUnit::Kilograms));
    for (const auto *wrong : {"", "mm", "84 kg", "1 ft 2"})
        CHECK_FALSE(readArm(wrong, ArmUnit::Millimetres));
}
