// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/ListText.h"

#include "core/base/Utf8.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>
#include <utility>

namespace lastrivet::exchange {

namespace {

/// What code page 1252 has from 0x80 to 0x9F, where Latin-1 has nothing that is seen; 0 where it
/// has nothing either.
constexpr std::array<char16_t, 32> signs{
    0x20AC, 0,      0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0,      0x017D, 0,      0,      0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0,      0x017E, 0x0178};

/// As the Unicode Standard has it in table 3-6.
void append(std::string &text, char32_t letter)
{
    const auto code = std::uint32_t(letter);
    const auto appendRest = [&text, code](int shift) {
        for (; shift >= 0; shift -= 6)
            text += char(0x80 | ((code >> shift) & 0x3F));
    };
    if (code < 0x80) {
        text += char(code);
    } else if (code < 0x800) {
        text += char(0xC0 | (code >> 6));
        appendRest(0);
    } else if (code < 0x10000) {
        text += char(0xE0 | (code >> 12));
        appendRest(6);
    } else {
        text += char(0xF0 | (code >> 18));
        appendRest(12);
    }
}

/// A text that begins with the mark of UTF-16, without it; nothing for any other, and for one whose
/// halves of letters do not meet.
std::optional<std::string> fromUtf16(std::string_view bytes)
{
    const bool isLittle = bytes.starts_with("\xFF\xFE");
    if (bytes.size() % 2 != 0 || (!isLittle && !bytes.starts_with("\xFE\xFF")))
        return std::nullopt;
    const auto unitAt = [bytes, isLittle](std::size_t place) {
        const auto first = std::uint32_t(static_cast<unsigned char>(bytes[place]));
        const auto second = std::uint32_t(static_cast<unsigned char>(bytes[place + 1]));
        return isLittle ? first | (second << 8) : (first << 8) | second;
    };
    std::string text;
    for (std::size_t place = 2; place < bytes.size(); place += 2) {
        std::uint32_t code = unitAt(place);
        if (code >= 0xD800 && code < 0xE000) {
            const std::uint32_t low = place + 2 < bytes.size() ? unitAt(place + 2) : 0;
            if (code >= 0xDC00 || low < 0xDC00 || low >= 0xE000)
                return std::nullopt;
            code = 0x10000 + ((code - 0xD800) << 10) + (low - 0xDC00);
            place += 2;
        }
        append(text, char32_t(code));
    }
    return text;
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
    if (auto text = fromUtf16(bytes))
        return std::move(*text);
    if (!firstNotUtf8(bytes) || bytes.find('\0') != std::string::npos || isDamagedUtf8(bytes))
        return bytes;
    std::string text;
    for (const char byte : bytes) {
        const auto code = static_cast<unsigned char>(byte);
        const std::size_t place = std::size_t(code) - 0x80;
        const bool isSign = code >= 0x80 && place < signs.size() && signs[place] != 0;
        append(text, isSign ? char32_t(signs[place]) : char32_t(code));
    }
    return text;
}

} // namespace lastrivet::exchange
