// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/PlainFigures.h"

#include "core/base/Digits.h"

#include <array>

namespace lastrivet {

namespace {

/// Space, and in UTF-8 the no-break, thin and narrow no-break ones.
constexpr std::array<std::string_view, 4> spaces{" ", "\xC2\xA0", "\xE2\x80\x89", "\xE2\x80\xAF"};

std::size_t figuresAtFront(std::string_view text)
{
    std::size_t count = 0;
    while (count < text.size() && isDigit(text[count]))
        ++count;
    return count;
}

/// How long the space at the front is; 0 when there is none.
std::size_t spaceAtFront(std::string_view text)
{
    for (const auto space : spaces) {
        if (text.starts_with(space))
            return space.size();
    }
    return 0;
}

/// A space between two digits has to separate thousands, as in "12 250"; nothing for "84 5",
/// "1500 250", "1.5 250" and "1 1/2".
std::optional<std::string> withoutSpaces(std::string_view text)
{
    constexpr std::size_t group = 3;
    std::string plain;
    bool isParted = false;
    bool areDecimals = false;
    std::size_t figures = 0;
    while (!text.empty()) {
        if (const auto space = spaceAtFront(text); space > 0) {
            isParted = true;
            text.remove_prefix(space);
            continue;
        }
        const bool isFigure = isDigit(text.front());
        if (isParted && isFigure && figures > 0) {
            if (areDecimals || figures > group || figuresAtFront(text) != group)
                return std::nullopt;
            figures = 0;
        }
        isParted = false;
        if (!isFigure)
            areDecimals = text.front() == '.' || text.front() == ',';
        figures = isFigure ? figures + 1 : 0;
        plain += text.front();
        text.remove_prefix(1);
    }
    return plain;
}

/// Whether the comma may separate thousands: in "1,850" and "12,000 mm", not in "0,125" or "1,85".
bool couldBeThousand(std::string_view text, std::size_t comma)
{
    const auto before = text.substr(0, comma);
    const bool isNought = before == "0" || before == "-0" || before.empty();
    return figuresAtFront(text.substr(comma + 1)) == 3 && !isNought;
}

} // namespace

std::optional<std::string> plainFigures(std::string_view text, DecimalSign sign)
{
    const auto together = withoutSpaces(text);
    if (!together)
        return std::nullopt;
    std::string plain = *together;
    const auto comma = plain.find(',');
    if (comma == std::string::npos)
        return plain;
    const bool mayBeThousand = sign != DecimalSign::Comma && couldBeThousand(plain, comma);
    if (mayBeThousand || plain.find_first_of(",.", comma + 1) != std::string::npos)
        return std::nullopt;
    plain[comma] = '.';
    return plain;
}

} // namespace lastrivet
