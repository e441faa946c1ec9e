// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/VisibleText.h"

#include <algorithm>

namespace lastrivet {

namespace {

constexpr std::string_view replacement = "\xEF\xBF\xBD"; // U+FFFD

/// How many bytes at the front are to be replaced, and by what.
struct Hidden {
    std::size_t bytes = 0;
    std::string sign;
};

/// Unicode has a picture for each control character of ASCII: U+2400 to U+2421.
std::string pictureOf(unsigned char control)
{
    const char last = control == 0x7F ? '\xA1' : char(0x80 + control);
    return {'\xE2', '\x90', last};
}

/// Embeddings, overrides and isolates: U+202A to U+202E, U+2066 to U+2069 (Unicode Standard Annex
/// 9, table 4). Marks of direction turn nothing round.
bool turnsRound(std::string_view text)
{
    if (text.size() < 3)
        return false;
    const auto last = static_cast<unsigned char>(text[2]);
    return (text.starts_with("\xE2\x80") && last >= 0xAA && last <= 0xAE) ||
           (text.starts_with("\xE2\x81") && last >= 0xA6 && last <= 0xA9);
}

Hidden hiddenAt(std::string_view text)
{
    const auto byte = static_cast<unsigned char>(text[0]);
    if ((byte < 0x20 && byte != '\t' && byte != '\n' && byte != '\r') || byte == 0x7F)
        return {1, pictureOf(byte)};
    // The second set of control characters, U+0080 to U+009F.
    if (byte == 0xC2 && text.size() > 1 && static_cast<unsigned char>(text[1]) < 0xA0)
        return {2, std::string(replacement)};
    return turnsRound(text) ? Hidden{3, std::string(replacement)} : Hidden{};
}

/// Nearly all texts have none of these bytes.
bool maySteer(char c)
{
    const auto byte = static_cast<unsigned char>(c);
    return byte < 0x20 || byte == 0x7F || byte == 0xC2 || byte == 0xE2;
}

} // namespace

std::string visibleText(std::string_view text)
{
    if (std::none_of(text.begin(), text.end(), maySteer))
        return std::string(text);
    std::string shown;
    while (!text.empty()) {
        const Hidden hidden = hiddenAt(text);
        shown.append(hidden.bytes ? std::string_view(hidden.sign) : text.substr(0, 1));
        text.remove_prefix(std::max<std::size_t>(hidden.bytes, 1));
    }
    return shown;
}

} // namespace lastrivet
