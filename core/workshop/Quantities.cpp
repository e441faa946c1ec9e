// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workshop/Quantities.h"

#include "core/base/Digits.h"
#include "core/base/PlainFigures.h"
#include "core/workshop/Inches.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <optional>
#include <string>

namespace lastrivet::workshop {

namespace {

struct Unit {
    std::string_view sign;
    Quantity quantity;
    /// How much of the tables' unit it is.
    double factor;
};

constexpr std::array<Unit, 29> units{{
    {"in", Quantity::Length, 1},
    {"\"", Quantity::Length, 1},
    {"mm", Quantity::Length, 1 / millimetresOfInch},
    {"cm", Quantity::Length, 10 / millimetresOfInch},
    {"m", Quantity::Length, 1000 / millimetresOfInch},
    {"ft", Quantity::Length, 12},
    {"ft", Quantity::Run, 1},
    {"m", Quantity::Run, 1000 / (12 * millimetresOfInch)},
    {"in", Quantity::Run, 1.0 / 12},
    {"in-lb", Quantity::Torque, 1},
    {"inlb", Quantity::Torque, 1},
    {"in-lbs", Quantity::Torque, 1},
    {"inlbs", Quantity::Torque, 1},
    {"lb-in", Quantity::Torque, 1},
    {"lbin", Quantity::Torque, 1},
    {"ft-lb", Quantity::Torque, 12},
    {"ftlb", Quantity::Torque, 12},
    {"ft-lbs", Quantity::Torque, 12},
    {"ftlbs", Quantity::Torque, 12},
    {"lb-ft", Quantity::Torque, 12},
    {"lbft", Quantity::Torque, 12},
    {"n·m", Quantity::Torque, 1 / newtonMetresOfInchPound},
    {"n-m", Quantity::Torque, 1 / newtonMetresOfInchPound},
    {"nm", Quantity::Torque, 1 / newtonMetresOfInchPound},
    {"lb", Quantity::Force, 1},
    {"lbs", Quantity::Force, 1},
    {"lbf", Quantity::Force, 1},
    {"n", Quantity::Force, 1 / newtonsOfPound},
    {"kn", Quantity::Force, 1000 / newtonsOfPound},
}};

/// "1 1/2" as "1-1/2": what stands before a fraction is no part of its upper number.
std::string dashBeforeFraction(std::string_view text)
{
    std::string plain(text);
    const auto bar = std::min(plain.find('/'), plain.size());
    auto begin = bar;
    while (begin > 0 && isDigit(plain[begin - 1]))
        --begin;
    // The blank of "7 / 8" stands within the fraction.
    if (bar == plain.size() || begin == bar)
        return plain;
    auto end = begin;
    while (end > 0 && plain[end - 1] == ' ')
        --end;
    if (end < begin && end > 0 && isDigit(plain[end - 1]))
        plain.replace(end, begin - end, "-");
    return plain;
}

/// The number and what stands behind it, without spaces, in lower case.
std::pair<std::string, std::string> parts(std::string_view text)
{
    std::string plain = plainFigures(dashBeforeFraction(text)).value_or(std::string());
    for (char &c : plain)
        c = c >= 'A' && c <= 'Z' ? char(c - 'A' + 'a') : c;
    const auto end = plain.find_last_of("0123456789.");
    const auto cut = end == std::string::npos ? 0 : end + 1;
    return {plain.substr(0, cut), plain.substr(cut)};
}

std::optional<double> numberOf(const std::string &text)
{
    if (const auto length = inches(text))
        return length;
    double value = 0;
    const auto read =
        std::from_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
    const bool isWhole = read.ec == std::errc{} && read.ptr == text.data() + text.size();
    return isWhole && value > -1e9 && value < 1e9 ? std::optional(value) : std::nullopt;
}

Message notOne(std::string_view text, Quantity quantity)
{
    const std::vector<std::string> arguments{std::string(text)};
    switch (quantity) {
    case Quantity::Length:
        return {"“{0}” is no length; write it as 1/8, 0.125 in or 3.2 mm.", arguments};
    case Quantity::Run:
        return {"“{0}” is no length of wire; write it as 20 ft or 6 m.", arguments};
    case Quantity::Torque:
        return {"“{0}” is no torque; write it as 20 in-lb, 2 ft-lb or 2.3 N·m.", arguments};
    case Quantity::Force:
        return {"“{0}” is no force; write it as 38 lb or 170 N.", arguments};
    case Quantity::Number:
        break;
    }
    return {"“{0}” is no number.", arguments};
}

} // namespace

Result<double, Message> inTableUnits(std::string_view text, Quantity quantity, UnitSystem system)
{
    const auto [figures, written] = parts(text);
    const auto number = numberOf(figures);
    if (!number || (quantity == Quantity::Number && !written.empty()))
        return notOne(text, quantity);
    if (quantity == Quantity::Number)
        return *number;
    if (written.empty())
        return *number / inUnits(1, quantity, system);
    const auto unit =
        std::find_if(units.begin(), units.end(), [&, sign = written](const Unit &known) {
            return known.sign == sign && known.quantity == quantity;
        });
    if (unit == units.end())
        return notOne(text, quantity);
    return *number * unit->factor;
}

double inUnits(double value, Quantity quantity, UnitSystem system)
{
    if (system == UnitSystem::Imperial)
        return value;
    switch (quantity) {
    case Quantity::Length:
        return value * millimetresOfInch;
    case Quantity::Run:
        return value * 12 * millimetresOfInch / 1000;
    case Quantity::Torque:
        return value * newtonMetresOfInchPound;
    case Quantity::Force:
        return value * newtonsOfPound;
    case Quantity::Number:
        break;
    }
    return value;
}

std::string_view unitSign(Quantity quantity, UnitSystem system)
{
    const bool isMetric = system == UnitSystem::Metric;
    switch (quantity) {
    case Quantity::Length:
        return isMetric ? "mm" : "in";
    case Quantity::Run:
        return isMetric ? "m" : "ft";
    case Quantity::Torque:
        return isMetric ? "N·m" : "in-lb";
    case Quantity::Force:
        return isMetric ? "N" : "lb";
    case Quantity::Number:
        break;
    }
    return {};
}

} // namespace lastrivet::workshop
