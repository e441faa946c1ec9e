// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/TypedNumber.h"

#include "core/base/CaseFold.h"
#include "core/base/Digits.h"
#include "core/base/Hyphens.h"
#include "core/base/PlainFigures.h"
#include "core/base/Trimmed.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <string>

namespace lastrivet {

namespace {

bool isBetweenFigures(std::string_view text, std::size_t at)
{
    return at > 0 && at + 1 < text.size() && isDigit(text[at - 1]) && isDigit(text[at + 1]);
}

/// The length of the number at the front: a sign, digits, and points and commas between digits; a
/// point may also begin it, as in ".4".
std::size_t lengthOfNumber(std::string_view text)
{
    std::size_t end = text.starts_with('-') || text.starts_with('+') ? 1 : 0;
    if (end + 1 < text.size() && text[end] == '.' && isDigit(text[end + 1]))
        ++end;
    while (end < text.size() && (isDigit(text[end]) || ((text[end] == '.' || text[end] == ',') &&
                                                        isBetweenFigures(text, end))))
        ++end;
    return end;
}

/// Takes off what parts two numbers.
bool takeBetween(std::string_view &text)
{
    constexpr std::array<std::string_view, 3> words{"to ", "bis ", "à "};
    const auto takeAny = [&](const auto &known) {
        const auto found = std::find_if(known.begin(), known.end(), [&](std::string_view between) {
            return text.starts_with(between);
        });
        if (found == known.end())
            return false;
        text = trimmed(text.substr(found->size()));
        return true;
    };
    return takeAny(hyphens) || takeAny(words);
}

/// What stands before and between two numbers that are said to be limits.
struct Span {
    std::string_view before;
    std::string_view between;
};
constexpr std::array<Span, 6> spans{{{"between ", "and "},
                                     {"zwischen ", "und "},
                                     {"entre ", "et "},
                                     {"from ", "to "},
                                     {"von ", "bis "},
                                     {"de ", "à "}}};

/// "between .4 and .6", "zwischen 0,4 und 0,6", "de 0,4 à 0,6".
std::optional<std::pair<double, double>> takeSpan(std::string_view &text, DecimalSign sign)
{
    const std::string small = folded(text);
    for (const Span &span : spans) {
        if (!small.starts_with(span.before))
            continue;
        auto rest = trimmed(text.substr(span.before.size()));
        const auto least = takeNumber(rest, sign);
        if (!least || !folded(rest).starts_with(span.between))
            return std::nullopt;
        rest = trimmed(rest.substr(span.between.size()));
        const auto most = takeNumber(rest, sign);
        if (!most)
            return std::nullopt;
        text = rest;
        return std::pair(*least, *most);
    }
    return std::nullopt;
}

} // namespace

std::optional<double> takeNumber(std::string_view &text, DecimalSign sign)
{
    constexpr std::string_view minus = "−";
    if (text.starts_with(minus)) {
        auto rest = text.substr(minus.size());
        const bool isNumber = !rest.empty() && isDigit(rest.front());
        const auto number = isNumber ? takeNumber(rest, sign) : std::nullopt;
        text = number ? rest : text;
        return number ? std::optional(-*number) : std::nullopt;
    }
    const auto length = lengthOfNumber(text);
    const auto figures = plainFigures(text.substr(0, length), sign);
    if (!figures)
        return std::nullopt;
    const char *begin = figures->data() + (figures->starts_with('+') ? 1 : 0);
    const char *end = figures->data() + figures->size();
    double number = 0;
    const auto read = std::from_chars(begin, end, number, std::chars_format::fixed);
    if (read.ec != std::errc{} || read.ptr != end)
        return std::nullopt;
    text = trimmed(text.substr(length));
    return number;
}

std::optional<std::pair<double, double>> takeRange(std::string_view &text, DecimalSign sign)
{
    if (const auto span = takeSpan(text, sign))
        return span;
    auto rest = text;
    const auto least = takeNumber(rest, sign);
    const auto most = least && takeBetween(rest) ? takeNumber(rest, sign) : std::nullopt;
    if (!most)
        return std::nullopt;
    text = rest;
    return std::pair(*least, *most);
}

std::vector<std::string_view> partsOfLine(std::string_view line)
{
    std::vector<std::string_view> parts;
    std::size_t begin = 0;
    for (std::size_t at = 0; at <= line.size(); ++at) {
        const bool isComma = at < line.size() && line[at] == ',' && !isBetweenFigures(line, at);
        if (at < line.size() && line[at] != ';' && !isComma)
            continue;
        if (const auto part = trimmed(line.substr(begin, at - begin)); !part.empty())
            parts.push_back(part);
        begin = at + 1;
    }
    return parts;
}

} // namespace lastrivet
