// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <string_view>

namespace lastrivet {

/// True for 0 to 9, whatever the locale.
constexpr bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}

/// True for one digit or more, and nothing else.
constexpr bool isAllDigits(std::string_view text)
{
    return !text.empty() && std::all_of(text.begin(), text.end(), isDigit);
}

} // namespace lastrivet
