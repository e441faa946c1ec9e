// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workshop/Rivet.h"

#include "core/workshop/Inches.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lastrivet::workshop {

namespace {

constexpr double greatestGrip = 10;

bool isSame(double a, double b)
{
    // The tables give 5/32 as 0.1562, and people type 0.156.
    return std::abs(a - b) < 0.0005;
}

bool isOf(const WorkshopTable &table, std::size_t row, std::string_view column, double diameter)
{
    const auto given = inches(table.text(row, column));
    return given && isSame(*given, diameter);
}

template <class Body>
void eachRow(std::string_view name, std::string_view column, double diameter, Body &&body)
{
    const auto &table = WorkshopTable::named(name);
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        if (isOf(table, row, column, diameter))
            body(table, row);
    }
}

/// Number drills are said with a number sign.
std::string drillName(const std::string &drill)
{
    const bool isNumber = !drill.empty() && std::all_of(drill.begin(), drill.end(), [](char c) {
        return c >= '0' && c <= '9';
    });
    return isNumber ? "#" + drill : drill;
}

std::vector<Drill> drillsFor(double diameter)
{
    std::vector<Drill> drills;
    eachRow("drill_sizes", "fastener", diameter, [&](const WorkshopTable &table, std::size_t row) {
        drills.push_back({table.text(row, "basis"), drillName(table.text(row, "drill")),
                          table.number(row, "drill_dia_in"), table.source(row)});
    });
    return drills;
}

std::vector<ShopHead> headsOf(double diameter)
{
    std::vector<ShopHead> heads;
    eachRow("rivet_shop_head", "rivet_dia", diameter,
            [&](const WorkshopTable &table, std::size_t row) {
                heads.push_back({table.text(row, "basis"), table.number(row, "head_dia_min_in"),
                                 table.number(row, "head_dia_max_in"),
                                 table.number(row, "head_height_min_in"),
                                 table.number(row, "head_height_max_in"), table.text(row, "note"),
                                 table.source(row)});
            });
    return heads;
}

std::vector<ThinnestSheet> sheetsFor(double diameter)
{
    std::vector<ThinnestSheet> sheets;
    eachRow("countersink", "rivet_dia", diameter, [&](const WorkshopTable &table, std::size_t row) {
        if (table.text(row, "item").starts_with("min_"))
            sheets.push_back(
                {table.text(row, "item"), table.number(row, "value").value(), table.source(row)});
    });
    return sheets;
}

Source lengthSource()
{
    const auto &table = WorkshopTable::named("rivet_spacing");
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        if (table.text(row, "item") == "length_rule")
            return table.source(row);
    }
    return {};
}

std::vector<Spacing> spacings(std::string_view beginning, double diameter)
{
    std::vector<Spacing> found;
    const auto &table = WorkshopTable::named("rivet_spacing");
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        const auto &rule = table.text(row, "item");
        const auto &unit = table.text(row, "unit");
        const auto value = table.number(row, "value").value_or(0);
        const bool isOneSize = rule.find("3/32") != std::string::npos;
        if (!rule.starts_with(beginning) || (unit != "D" && unit != "in") ||
            (isOneSize && !isSame(diameter, 3.0 / 32)))
            continue;
        const bool isInDiameters = unit == "D";
        found.push_back({rule, table.text(row, "case"), isInDiameters ? value * diameter : value,
                         isInDiameters ? std::optional(value) : std::nullopt,
                         table.text(row, "note"), table.source(row)});
    }
    return found;
}

} // namespace

std::vector<std::string> rivetDiameters()
{
    std::vector<std::string> diameters;
    const auto &table = WorkshopTable::named("rivet_shop_head");
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        if (table.text(row, "basis") == "nominal_rule")
            diameters.push_back(table.text(row, "rivet_dia"));
    }
    return diameters;
}

Result<Rivet, Message> rivet(double diameter, double grip)
{
    const auto known = rivetDiameters();
    const auto size = std::find_if(known.begin(), known.end(), [&](const std::string &text) {
        return isSame(inches(text).value_or(0), diameter);
    });
    if (size == known.end())
        return Message{"The tables have no solid rivet of {0} in; they have {1}.",
                       {fmt::to_string(diameter), fmt::format("{}", fmt::join(known, ", "))}};
    if (!std::isfinite(grip) || grip <= 0 || grip > greatestGrip)
        return Message{"A grip is above zero and at most {0} in.", {fmt::to_string(greatestGrip)}};
    Rivet rivet;
    rivet.diameter = *inches(*size);
    // A length that is a sixteenth already is not rounded up by what arithmetic adds to it.
    constexpr double hair = 1e-9;
    rivet.length_code = int(std::ceil(16 * (grip + 1.5 * rivet.diameter) - hair));
    rivet.length = rivet.length_code / 16.0;
    rivet.length_source = lengthSource();
    rivet.drills = drillsFor(rivet.diameter);
    rivet.shop_heads = headsOf(rivet.diameter);
    rivet.countersink = sheetsFor(rivet.diameter);
    return rivet;
}

bool isWithin(const ShopHead &head, double diameter, double height)
{
    constexpr double rounding = 0.0005;
    const auto isIn = [](double value, const std::optional<double> &least,
                         const std::optional<double> &most) {
        return (!least || value + rounding >= *least) && (!most || value <= *most + rounding);
    };
    return isIn(diameter, head.diameter_min, head.diameter_max) &&
           isIn(height, head.height_min, head.height_max);
}

std::vector<Spacing> edgeDistances(double diameter)
{
    return spacings("edge_", diameter);
}

std::vector<Spacing> pitches(double diameter)
{
    return spacings("pitch_", diameter);
}

} // namespace lastrivet::workshop
