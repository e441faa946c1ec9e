// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/ListText.h"

#include "core/base/Utf8.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <string_view>

namespace lastrivet::exchange {

namespace {

/// What code page 1252 has from 0x80 to 0x9F, where Latin-1 has nothing that is seen; 0 where it
/// has nothing either.
constexpr std::array<char16_t, 32> signs{
    0x20AC, 0,      0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0,      0x017D, 0,      0,      0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0,      0x017E, 0x0178};

/// Up to U+FFFF (Unicode Standard, table 3-6).
void append(std::string &text, char16_t letter)
{
    const unsigned code = letter;
    if (code < 0x80) {
        text += char(code);
    } else if (code < 0x800) {
        text += char(0xC0 | (code >> 6));
        text += char(0x80 | (code & 0x3F));
    } else {
        text += char(0xE0 | (code >> 12));
        text += char(0x80 | ((code >> 6) & 0x3F));
        text += char(0x80 | (code & 0x3F));
    }
}

/// Whether a text that is no UTF-8 was meant to be, as its mark or most of its letters beyond ASCII
/// say: read as code page 1252 it would be gibberish for the sake of a few bad bytes.
bool isDamagedUtf8(std::string_view text)
{
    if (text.starts_with("\xEF\xBB\xBF"))
        return true;
    const auto isLead = [](char c) { return (static_cast<unsigned char>(c) & 0xC0) == 0xC0; };
    std::ptrdiff_t whole = 0;
    std::ptrdiff_t bad = 0;
    for (auto wrong = firstNotUtf8(text); wrong; wrong = firstNotUtf8(text)) {
        const auto before = text.substr(0, *wrong);
        whole += std::count_if(before.begin(), before.end(), isLead);
        ++bad;
        text.remove_prefix(*wrong + 1);
    }
    return whole + std::count_if(text.begin(), text.end(), isLead) > bad;
}

} // namespace

std::string listText(std::string bytes)
{
    if (!firstNotUtf8(bytes) || bytes.find('\0') != std::string::npos || isDamagedUtf8(bytes))
        return bytes;
    std::string text;
    for (const char byte : bytes) {
        const auto code = static_cast<unsigned char>(byte);
        const std::size_t place = std::size_t(code) - 0x80;
        const bool isSign = code >= 0x80 && place < signs.size() && signs[place] != 0;
        append(text, isSign ? signs[place] : char16_t(code));
    }
    return text;
}

} // namespace lastrivet::exchange
