// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/CaseFold.h"

#include <algorithm>

namespace lastrivet {

namespace {

constexpr std::string_view around = " \t\n,;()[]\"";

} // namespace

std::string asciiLower(std::string_view text)
{
    std::string lower(text);
    for (char &c : lower)
        c = c >= 'A' && c <= 'Z' ? char(c - 'A' + 'a') : c;
    return lower;
}

std::string asciiUpper(std::string_view text)
{
    std::string upper(text);
    for (char &c : upper)
        c = c >= 'a' && c <= 'z' ? char(c - 'a' + 'A') : c;
    return upper;
}

std::string folded(std::string_view text)
{
    std::string lower = asciiLower(text);
    for (std::size_t i = 1; i < lower.size(); ++i) {
        const auto byte = static_cast<unsigned char>(lower[i]);
        // In UTF-8 the capitals of Latin-1 are C3 80 to C3 9E but for the multiplication sign.
        if (static_cast<unsigned char>(lower[i - 1]) == 0xC3 && byte >= 0x80 && byte <= 0x9E &&
            byte != 0x97)
            lower[i] = char(byte + 0x20);
    }
    return lower;
}

std::vector<std::string> foldedWords(std::string_view text)
{
    const std::string small = folded(text);
    std::vector<std::string> words;
    for (std::size_t begin = small.find_first_not_of(around); begin != std::string::npos;) {
        const std::size_t end = std::min(small.find_first_of(around, begin), small.size());
        words.push_back(small.substr(begin, end - begin));
        begin = small.find_first_not_of(around, end);
    }
    return words;
}

} // namespace lastrivet
