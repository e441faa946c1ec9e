// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace lastrivet {

/// True for A to Z in either case, whatever the locale.
constexpr bool isAsciiLetter(char c)
{
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
}

/// The text with A to Z in lower case, and all other bytes unchanged, whatever the locale.
std::string asciiLower(std::string_view text);
/// The same in upper case.
std::string asciiUpper(std::string_view text);

/// The text in lower case (ASCII and Latin-1, in UTF-8), for comparing what is typed with what is
/// on record.
std::string folded(std::string_view text);

/// The words of a text in lower case, without the commas, semicolons, brackets and quotation marks
/// around them.
std::vector<std::string> foldedWords(std::string_view text);

} // namespace lastrivet
