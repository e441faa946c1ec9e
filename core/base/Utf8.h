// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace lastrivet {

/// The offset of the first byte that is not well-formed UTF-8 (Unicode Standard, table 3-7); empty
/// when all of the text is.
std::optional<std::size_t> firstNotUtf8(std::string_view text);

/// The text with U+FFFD in place of each byte that is not well-formed UTF-8, and of U+0000.
std::string wellFormed(std::string_view text);

/// True for the bytes of a character in UTF-8 but its first.
constexpr bool continuesCharacter(char c)
{
    return (static_cast<unsigned char>(c) & 0xC0) == 0x80;
}

/// The beginning of a text, of at most `mostBytes` bytes, that cuts through no character.
constexpr std::string_view prefixOf(std::string_view text, std::size_t mostBytes)
{
    if (text.size() <= mostBytes)
        return text;
    std::size_t end = mostBytes;
    while (end > 0 && continuesCharacter(text[end]))
        --end;
    return text.substr(0, end);
}

} // namespace lastrivet
