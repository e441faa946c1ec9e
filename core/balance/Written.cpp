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
    if (written.unit == "lbs")
        written.unit = "lb";
    return written;
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

} // namespace lastrivet::balance
