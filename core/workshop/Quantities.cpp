// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workshop/Quantities.h"

#include "core/base/Digits.h"
#include "core/base/PlainFigures.h"
#include "core/workshop/Inches.h"
#include "core/workshop/TorqueUnitWords.h"

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

/// But for those of torque, which `torqueUnitSaid` knows.
constexpr std::array<Unit, 14> units{{
    {"in", Quantity::Length, 1},
    {"\"", Quantity::Length, 1},
    {"mm", Quantity::Length, 1 / millimetresOfInch},
    {"cm", Quantity::Length, 10 / millimetresOfInch},
    {"m", Quantity::Length, 1000 / millimetresOfInch},
    {"ft", Quantity::Length, 12},
    {"ft", Quantity::Run, 1},
    {"m", Quantity::Run, 1000 / (12 * millimetresOfInch)},
    {"in", Quantity::Run, 1.0 / 12},
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
    const auto end = plain.find_last_of("0123456789");
    auto cut = end == std::string::npos ? 0 : end + 1;
    // The point of "5. mm" is the number's, that of "5 N.m" the unit's.
    if (cut > 0 && cut < plain.size() && plain[cut] == '.')
        ++cut;
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

/// How much of the tables' unit one of the written unit is.
std::optional<double> factorOf(const std::string &written, Quantity quantity)
{
    if (quantity == Quantity::Torque) {
        const auto unit = torqueUnitSaid(written);
        return unit ? std::optional(inchPoundsIn(*unit)) : std::nullopt;
    }
    const auto unit = std::find_if(units.begin(), units.end(), [&](const Unit &known) {
        return known.sign == written && known.quantity == quantity;
    });
    return unit == units.end() ? std::nullopt : std::optional(unit->factor);
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
    const auto factor = factorOf(written, quantity);
    return factor ? Result<double, Message>(*number * *factor) : notOne(text, quantity);
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
