// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <charconv>
#include <optional>
#include <string_view>
#include <system_error>

namespace lastrivet {

/// The number that the whole text spells, as `std::from_chars` reads it, whatever the locale. Empty
/// for anything else: blanks, a plus sign, further characters, a number beyond the type.
template <class Number> std::optional<Number> parseNumber(std::string_view text)
{
    Number number{};
    const char *const end = text.data() + text.size();
    const auto [rest, error] = std::from_chars(text.data(), end, number);
    return error == std::errc{} && rest == end ? std::optional(number) : std::nullopt;
}

} // namespace lastrivet
