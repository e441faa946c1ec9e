// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/PlainFigures.h"

#include <array>

namespace lastrivet {

namespace {

/// Space, and in UTF-8 the no-break, thin and narrow no-break ones.
constexpr std::array<std::string_view, 4> spaces{" ", "\xC2\xA0", "\xE2\x80\x89", "\xE2\x80\xAF"};

std::string withoutSpaces(std::string_view text)
{
    std::string plain;
    while (!text.empty()) {
        std::size_t length = 0;
        for (const auto space : spaces) {
            if (text.starts_with(space))
                length = space.size();
        }
        if (length == 0)
            plain += text.front();
        text.remove_prefix(length == 0 ? 1 : length);
    }
    return plain;
}

bool isFigure(char c)
{
    return c >= '0' && c <= '9';
}

/// "1,850" and "12,000 mm", but not "0,125" or "1,85".
bool couldBeThousand(std::string_view text, std::size_t comma)
{
    std::size_t after = comma + 1;
    while (after < text.size() && isFigure(text[after]))
        ++after;
    const auto before = text.substr(0, comma);
    const bool isNought = before == "0" || before == "-0" || before.empty();
    return after - comma - 1 == 3 && !isNought;
}

} // namespace

std::optional<std::string> plainFigures(std::string_view text)
{
    std::string plain = withoutSpaces(text);
    const auto comma = plain.find(',');
    if (comma == std::string::npos)
        return plain;
    if (plain.find_first_of(",.", comma + 1) != std::string::npos || couldBeThousand(plain, comma))
        return std::nullopt;
    plain[comma] = '.';
    return plain;
}

} // namespace lastrivet
