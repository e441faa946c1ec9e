// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/balance/Written.h"

#include "core/balance/Units.h"
#include "core/base/CaseFold.h"
#include "core/base/PlainFigures.h"

#include <array>
#include <charconv>
#include <cstddef>
#include <optional>
#include <string>
#include <type_traits>

namespace lastrivet::balance {

namespace {

constexpr double largest = 1e9;

struct Written {
    double number = 0;
    std::string unit;
};

std::optional<Written> split(std::string_view text)
{
    const auto figures = plainFigures(text);
    if (!figures)
        return std::nullopt;
    const std::string &plain = *figures;
    Written written;
    const char *begin = plain.data() + (plain.starts_with('+') ? 1 : 0);
    const char *end = plain.data() + plain.size();
    const auto read = std::from_chars(begin, end, written.number, std::chars_format::fixed);
    if (read.ec != std::errc{} || !(written.number > -largest && written.number < largest))
        return std::nullopt;
    written.unit = asciiLower({read.ptr, std::size_t(end - read.ptr)});
    if (written.unit.ends_with('.'))
        written.unit.pop_back();
    if (written.unit == "lbs")
        written.unit = "lb";
    if (written.unit == "\"")
        written.unit = "in";
    return written;
}

/// Asks which unit is meant where one is written that is not the field's.
template <class Unit>
std::optional<Message> whyOtherUnit(std::string_view text, std::optional<Unit> unit)
{
    const auto written = split(text);
    if (!written || written->unit.empty() || (unit && written->unit == word(*unit)))
        return std::nullopt;
    const bool isMetric = written->unit == "m" || written->unit == "cm";
    const bool isOther =
        parseWord<Unit>(written->unit) || (std::is_same_v<Unit, ArmUnit> && isMetric);
    if (!isOther)
        return std::nullopt;
    if (!unit)
        return Message{"“{0}”: choose the unit first, and write the number alone or in it.",
                       {std::string(text)}};
    return Message{"“{0}” is not in {1}: write it in {1}, or choose the other unit first.",
                   {std::string(text), std::string(word(*unit))}};
}

} // namespace

Result<double, Message> readWeight(std::string_view text, WeightUnit unit)
{
    const auto written = split(text);
    if (written && written->unit.empty())
        return written->number;
    if (const auto from = written ? parseWord<WeightUnit>(written->unit) : std::nullopt)
        return converted(written->number, *from, unit);
    return Message{"“{0}” is no weight; write it as 84, 84 kg or 185 lb.", {std::string(text)}};
}

Result<double, Message> readArm(std::string_view text, ArmUnit unit)
{
    const auto written = split(text);
    if (written && written->unit.empty())
        return written->number;
    if (const auto from = written ? parseWord<ArmUnit>(written->unit) : std::nullopt)
        return converted(written->number, *from, unit);
    if (written && (written->unit == "m" || written->unit == "cm"))
        return converted(written->number * (written->unit == "m" ? 1000 : 10), ArmUnit::Millimetres,
                         unit);
    return Message{"“{0}” is no arm; write it as 1750, 1750 mm or 68.9 in.", {std::string(text)}};
}

Result<double, Message> readWeightIn(std::string_view text, std::optional<WeightUnit> unit)
{
    if (auto why = whyOtherUnit(text, unit))
        return *why;
    return readWeight(text, unit.value_or(WeightUnit::Kilograms));
}

Result<double, Message> readArmIn(std::string_view text, std::optional<ArmUnit> unit)
{
    if (auto why = whyOtherUnit(text, unit))
        return *why;
    return readArm(text, unit.value_or(ArmUnit::Millimetres));
}

} // namespace lastrivet::balance
