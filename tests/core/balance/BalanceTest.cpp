// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/balance/Balance.h"
#include "core/balance/BalanceFile.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <limits>
#include <string>
#include <vector>

using namespace lastrivet;
using namespace lastrivet::balance;

namespace {

Result<Balance, Message> sumOf(std::vector<Item> items, std::optional<Chord> chord = {})
{
    return balance::balance(items, chord);
}

std::string complaintAbout(std::string_view json)
{
    const auto question = readQuestion(json);
    REQUIRE_FALSE(question);
    return english(question.reason());
}

} // namespace

TEST_CASE("An aeroplane on three scales comes to what the handbook works out")
{
    // FAA-H-8083-30 chapter 4 fig. 4-20: scales less tare, fuel taken away, unusable fuel added.
    const auto sum = sumOf({{"left main", 645, 70},
                            {"right main", 635, 70},
                            {"nose", 222.5, -30},
                            {"fuel", -177, 95},
                            {"unusable fuel", 6, 98}});
    REQUIRE(sum);
    CHECK(sum->weight == 1331.5);
    CHECK(sum->moment == 66698);
    CHECK(sum->cg == Approx(66698 / 1331.5));
    CHECK_FALSE(sum->percent_mac);
}

TEST_CASE("The loading examples of AC 43.13-1B chapter 10, with its misprints put right")
{
    const Item empty{"empty", 1169, 10.6};
    const Item oil{"oil", 17, -49};
    const Item pilot{"pilot", 170, 16};
    const Item rear{"two in the rear", 340, 48};
    const Item baggage{"baggage", 100, 75.5};
    // The AC rounds the moment of the empty aeroplane to 12391; the sums here are unrounded.
    const auto forward = sumOf({empty, oil, pilot, {"fuel", 83, 22}});
    CHECK(forward->weight == 1439);
    CHECK(forward->cg == Approx(11.2).margin(0.05));
    const auto rearward = sumOf({empty, oil, pilot, rear, {"fuel", 240, 22}, baggage});
    CHECK(rearward->weight == 2036);
    CHECK(rearward->cg == Approx(21.3).margin(0.05));
    // Fig. 10-13 prints +18.6; its own numbers give 18.32.
    const auto passengers = sumOf({empty, oil, pilot, pilot, rear, {"fuel", 234, 22}});
    CHECK(passengers->weight == 2100);
    CHECK(passengers->cg == Approx(18.317).margin(0.001));
    // Fig. 10-14 prints 20366 for the divisor 2036; the quotient is right.
    const auto bags =
        sumOf({empty, oil, pilot, {"one in the rear", 170, 48}, pilot, {"fuel", 240, 22}, baggage});
    CHECK(bags->weight == 2036);
    CHECK(bags->cg == Approx(18.7).margin(0.05));
}

TEST_CASE("The centre of gravity as a share of the chord")
{
    // (CG - LEMAC) x 100 / MAC, FAA-H-8083-1.
    const auto sum = sumOf({{"all", 1000, 161}}, Chord{144, 62});
    REQUIRE(sum->percent_mac);
    CHECK(*sum->percent_mac == Approx(17 * 100.0 / 62));
    CHECK_FALSE(sumOf({{"all", 1000, 161}}, Chord{144, 0}));
}

TEST_CASE("What has no centre of gravity gets one sentence")
{
    CHECK_FALSE(sumOf({}));
    CHECK_FALSE(sumOf({{"fuel", -10, 5}}));
    CHECK_FALSE(sumOf({{"a", 10, 5}, {"b", -10, 5}}));
    CHECK_FALSE(sumOf({{"a", std::numeric_limits<double>::infinity(), 5}}));
    CHECK_FALSE(sumOf({{"a", 10, std::nan("")}}));
    const std::string tooLarge = "These numbers are too large to be reckoned with.";
    CHECK(english(sumOf({{"a", 1e308, 0}, {"b", 1e308, 0}}).reason()) == tooLarge);
    CHECK(english(sumOf({{"a", 1e308, 1e308}}).reason()) == tooLarge);
    CHECK(english(sumOf({{"a", 10, 1e300}}, Chord{0, 1e-300}).reason()) == tooLarge);
}

TEST_CASE("A balance file is read strictly")
{
    const auto question = readQuestion(
        R"({"weight_unit": "lb", "arm_unit": "in", "items": [{"name": "a", "weight": 2, "arm": 3.5}],
            "mac": {"lemac": 1, "length": 2}})");
    REQUIRE(question);
    CHECK(question->items.size() == 1);
    CHECK(question->items.front().arm == 3.5);
    CHECK(question->chord->length == 2);
    CHECK(complaintAbout("").find("not JSON") != std::string::npos);
    CHECK(complaintAbout(R"({"weight_unit": "st", "arm_unit": "in", "items": []})")
              .find("/weight_unit is none of lb, kg") != std::string::npos);
    CHECK(complaintAbout(R"({"weight_unit": "lb", "items": []})").find("/arm_unit is missing") !=
          std::string::npos);
    CHECK(complaintAbout(R"({"weight_unit": "lb", "arm_unit": "in", "items": [{"weight": "2"}]})")
              .find("/items/0/weight is no number") != std::string::npos);
    CHECK(complaintAbout(R"({"weight_unit": "lb", "arm_unit": "in", "items": [], "datum": "nose"})")
              .find("/datum is not known here") != std::string::npos);
    CHECK(complaintAbout("[]").find("no object") != std::string::npos);
    CHECK(complaintAbout(R"({"weight_unit": "lb", "weight_unit": "kg"})") ==
          "It has the field \"weight_unit\" twice in one object.");
    CHECK(complaintAbout(std::string("{}\0zzz", 6)) ==
          "It holds the character U+0000 at line 1, column 3.");
}
