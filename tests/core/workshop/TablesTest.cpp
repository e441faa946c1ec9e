// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/balance/Balance.h"
#include "core/workshop/Rivet.h"
#include "core/workshop/Sheet.h"
#include "core/workshop/Torque.h"
#include "core/workshop/WorkshopTable.h"
#include "core/workshop/Wrench.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <map>

using namespace lastrivet;
using namespace lastrivet::workshop;

namespace {

/// Each loading of a table as its items, its printed total and its result.
struct Example {
    std::vector<balance::Item> items;
    double weight = 0;
    double moment = 0;
    std::string result;
    std::string note;
};

std::map<std::string, Example> loadings()
{
    std::map<std::string, Example> all;
    const auto &table = WorkshopTable::named("wb_examples");
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        if (table.text(row, "kind") == "formula" || table.source(row).isFromMemory())
            continue;
        auto &example = all[table.text(row, "example")];
        if (table.text(row, "item") == "TOTAL") {
            example.weight = table.number(row, "weight").value();
            example.moment = table.number(row, "moment").value();
            example.result = table.text(row, "result");
            example.note = table.text(row, "note");
        } else {
            example.items.push_back({table.text(row, "item"), table.number(row, "weight").value(),
                                     table.number(row, "arm").value()});
        }
    }
    return all;
}

} // namespace

TEST_CASE("Loadings of FAA-H-8083-30 and AC 43.13-1B chapter 10 come to their printed totals")
{
    const auto all = loadings();
    REQUIRE(all.size() == 5);
    for (const auto &[name, example] : all) {
        CAPTURE(name);
        const auto sum = balance::balance(example.items, std::nullopt);
        REQUIRE(sum);
        CHECK(sum->weight == example.weight);
        // The figures round each moment to whole pound-inches.
        CHECK(sum->moment == Approx(example.moment).margin(1));
    }
    const auto cg = [&](const char *name) {
        return balance::balance(all.at(name).items, std::nullopt)->cg;
    };
    // Figs. 10-10, 10-11 and 10-14 print 11.2, 21.3 and 18.7.
    CHECK(cg("B1_forward_extreme") == Approx(11.2).margin(0.05));
    CHECK(cg("B2_rearward_extreme") == Approx(21.3).margin(0.05));
    CHECK(cg("B4_max_baggage") == Approx(18.7).margin(0.05));
    // Fig. 10-13 prints +18.6; its own numbers come to 18.32, and our copy says so.
    CHECK(cg("B3_max_passengers") == Approx(38466.0 / 2100).margin(0.001));
    CHECK(std::abs(cg("B3_max_passengers") - 18.6) > 0.2);
    CHECK(all.at("B3_max_passengers").note.find("ERROR IN SOURCE") != std::string::npos);
    CHECK(all.at("B4_max_baggage").note.find("misprinted 20366") != std::string::npos);
}

TEST_CASE("The misprints of an Army copy of the torque table are noted, not taken over")
{
    // TM 9-6150-228 prints 150 for the least of 3/8-16 and 12 for the most of 10-24 in shear.
    const auto coarse = torque("3/8-16", Nut::Tension, 0);
    REQUIRE(coarse);
    CHECK(coarse->minimum == 160);
    CHECK(coarse->remark.find("150-185") != std::string::npos);
    const auto small = torque("10-24", Nut::Shear, 0);
    REQUIRE(small);
    CHECK(small->allowed_maximum == 21);
    CHECK(small->remark.find("misprint") != std::string::npos);
    const auto &spacing = WorkshopTable::named("rivet_spacing");
    bool isNoted = false;
    for (std::size_t row = 0; row < spacing.rowCount(); ++row) {
        if (spacing.text(row, "item") == "transverse_pitch_min")
            isNoted = spacing.number(row, "value") == 2.5 &&
                      spacing.text(row, "note").find("misprint") != std::string::npos;
    }
    CHECK(isNoted);
}

TEST_CASE("The worked examples that the program shows are the sums that it makes")
{
    const auto &sheet = WorkshopTable::named("sheet_metal_examples");
    const auto computed = [&](std::size_t row) { return sheet.number(row, "computed").value(); };
    REQUIRE(sheet.rowCount() == 5);
    CHECK(*setback(45, 0.25, 0.064) == Approx(computed(0)).margin(0.00005));
    CHECK(*setback(135, 0.25, 0.064) == Approx(computed(1)).margin(0.00005));
    CHECK(*rivetsOfSplice(4.9, 0.75, 10) == std::ceil(computed(2)));
    CHECK(*rivetsThatFit(2, 10, 0.5) == computed(3));
    CHECK(rivetSizes(0.032)->target == Approx(computed(4)));
    const auto &wrench = WorkshopTable::named("torque_extension_examples");
    for (std::size_t row = 0; row < wrench.rowCount(); ++row) {
        const double lever = wrench.number(row, "lever_L").value();
        const double extension = wrench.number(row, "extension_E").value();
        const auto desired = wrench.number(row, "desired");
        const double sum =
            desired ? *wrenchSetting(*desired, lever, extension)
                    : *appliedTorque(wrench.number(row, "set").value(), lever, extension);
        CHECK(sum == Approx(wrench.number(row, "computed").value()).margin(0.005));
    }
}

TEST_CASE("Rows of the shop head table are their rule, where the rule is all there is")
{
    // FAA-H-8083-31 fig. 4-76: 1.5 D and 0.5 D. Trade notes: 1.25 D to 1.66 D, 1/3 D to 2/3 D.
    // MIL-R-47196A table III: 1.3 D and 0.4 D, checked at the sizes that were read.
    const auto &table = WorkshopTable::named("rivet_shop_head");
    int checked = 0;
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        const auto diameter = table.number(row, "dia_in");
        if (!diameter || table.source(row).isFromMemory())
            continue;
        const auto &basis = table.text(row, "basis");
        const double wide = basis == "nominal_rule" ? 1.5 : basis == "mil_minimum" ? 1.3 : 1.25;
        const double high = basis == "nominal_rule" ? 0.5 : basis == "mil_minimum" ? 0.4 : 1.0 / 3;
        CAPTURE(basis, *diameter);
        CHECK(table.number(row, "head_dia_min_in").value() ==
              Approx(wide * *diameter).margin(0.0011));
        CHECK(table.number(row, "head_height_min_in").value() ==
              Approx(high * *diameter).margin(0.0011));
        ++checked;
    }
    CHECK(checked == 14);
}
