// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workshop/Sheet.h"

#include "core/workshop/Inches.h"
#include "core/workshop/Rivet.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <numbers>

namespace lastrivet::workshop {

namespace {

constexpr double thickest = 2;
constexpr double largestCount = 1e6;
/// People type 0.0625 for what the tables call .064, and arithmetic adds a hair.
constexpr double hair = 1e-9;

bool isThickness(double thickness)
{
    return std::isfinite(thickness) && thickness > 0 && thickness <= thickest;
}

Message noThickness()
{
    return {"A sheet is thicker than nothing and at most {0} in.", {fmt::to_string(thickest)}};
}

Result<int, Message> counted(double rivets)
{
    if (!(rivets > 0) || rivets > largestCount)
        return Message{"Rivets an inch, share, width and pitch are above zero.", {}};
    return int(std::ceil(rivets - hair));
}

/// The column of a diameter: its fraction.
std::string columnFor(double diameter)
{
    const auto &table = WorkshopTable::named("rivets_per_inch_5052");
    for (const auto &column : table.columns()) {
        const auto size = inches(column);
        if (size && std::abs(*size - diameter) < 0.0005)
            return column;
    }
    return {};
}

Source ruleSource(std::string_view item)
{
    const auto &table = WorkshopTable::named("rivet_spacing");
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        if (table.text(row, "item") == item)
            return table.source(row);
    }
    return {};
}

} // namespace

Result<double, Message> setback(double degrees, double radius, double thickness)
{
    if (!(degrees > 0 && degrees < 180))
        return Message{"A bend is between 0 and 180 degrees.", {}};
    if (!std::isfinite(radius) || radius < 0)
        return Message{"A bend radius is 0 or more.", {}};
    if (!isThickness(thickness))
        return noThickness();
    return std::tan(degrees * std::numbers::pi / 360) * (radius + thickness);
}

Result<RivetsPerInch, Message> rivetsPerInch(double thickness, double diameter)
{
    if (!isThickness(thickness))
        return noThickness();
    const auto &table = WorkshopTable::named("rivets_per_inch_5052");
    const auto column = columnFor(diameter);
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        const auto sheet = table.number(row, "thickness_in").value();
        const auto count = table.number(row, column);
        if (sheet + hair >= thickness && count)
            return RivetsPerInch{sheet, *count, table.source(row)};
        if (sheet + hair >= thickness)
            break;
    }
    return Message{"The table has no rivets of {0} in for a sheet of {1} in.",
                   {fmt::to_string(diameter), fmt::to_string(thickness)}};
}

Result<int, Message> rivetsOfSplice(double perInch, double share, double width)
{
    return counted(perInch > 0 && share > 0 && width > 0 ? perInch * share * width : 0);
}

Result<int, Message> rivetsThatFit(double rows, double width, double pitch)
{
    if (!(rows >= 1) || rows != std::floor(rows))
        return Message{"Rows are counted: 1, 2, 3 and so on.", {}};
    if (!(width > 0) || !(pitch > 0) || rows * width / pitch > largestCount)
        return Message{"Rivets an inch, share, width and pitch are above zero.", {}};
    return int(rows * std::floor(width / pitch + hair));
}

Result<RivetSizes, Message> rivetSizes(double thickness)
{
    if (!isThickness(thickness))
        return noThickness();
    RivetSizes sizes;
    sizes.target = 3 * thickness;
    sizes.least = std::max(thickness, 3.0 / 32);
    for (const auto &size : rivetDiameters()) {
        if (sizes.size.empty() && inches(size).value_or(0) + hair >= sizes.target)
            sizes.size = size;
    }
    sizes.target_source = ruleSource("rivet_dia_rule_faa");
    sizes.least_source = ruleSource("rivet_dia_min_navy");
    return sizes;
}

} // namespace lastrivet::workshop
