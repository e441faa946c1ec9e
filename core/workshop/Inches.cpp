// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workshop/Inches.h"

#include <charconv>

namespace lastrivet::workshop {

namespace {

constexpr double longest = 1000;

std::optional<double> bounded(double value)
{
    return value >= 0 && value <= longest ? std::optional(value) : std::nullopt;
}

std::optional<double> decimal(std::string_view text)
{
    double value = 0;
    const auto read =
        std::from_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
    const bool isWhole = read.ec == std::errc{} && read.ptr == text.data() + text.size();
    return isWhole ? bounded(value) : std::nullopt;
}

std::optional<double> fraction(std::string_view text)
{
    const auto bar = text.find('/');
    if (bar == std::string_view::npos)
        return decimal(text);
    const auto upper = decimal(text.substr(0, bar));
    const auto lower = decimal(text.substr(bar + 1));
    return upper && lower && *lower > 0 ? bounded(*upper / *lower) : std::nullopt;
}

} // namespace

std::optional<double> inches(std::string_view text)
{
    const auto dash = text.find('-');
    if (dash == std::string_view::npos || dash == 0)
        return fraction(text);
    // "50-70" is a span, and no sum.
    if (text.find('/', dash) == std::string_view::npos)
        return std::nullopt;
    const auto whole = decimal(text.substr(0, dash));
    const auto rest = fraction(text.substr(dash + 1));
    return whole && rest ? bounded(*whole + *rest) : std::nullopt;
}

} // namespace lastrivet::workshop
