// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Utf8.h"

#include <cstdint>
#include <cstring>

namespace lastrivet {

namespace {

using Byte = unsigned char;

/// What may follow a leading byte: how many bytes, and the bounds of the first of them, which keep
/// out surrogates, long forms and what lies beyond U+10FFFF.
struct Sequence {
    std::size_t followers;
    Byte low;
    Byte high;
};

std::optional<Sequence> sequenceOf(Byte lead)
{
    if (lead < 0x80)
        return Sequence{0, 0, 0};
    if (lead >= 0xC2 && lead <= 0xDF)
        return Sequence{1, 0x80, 0xBF};
    if (lead >= 0xE0 && lead <= 0xEF)
        return Sequence{2, Byte(lead == 0xE0 ? 0xA0 : 0x80), Byte(lead == 0xED ? 0x9F : 0xBF)};
    if (lead >= 0xF0 && lead <= 0xF4)
        return Sequence{3, Byte(lead == 0xF0 ? 0x90 : 0x80), Byte(lead == 0xF4 ? 0x8F : 0xBF)};
    return std::nullopt;
}

/// How many bytes at the beginning are surely ASCII, looked at in eights.
std::size_t plainBytes(std::string_view text)
{
    constexpr std::uint64_t highBits = 0x8080808080808080;
    std::size_t count = 0;
    for (std::uint64_t eight = 0; count + sizeof eight <= text.size(); count += sizeof eight) {
        std::memcpy(&eight, text.data() + count, sizeof eight);
        if (eight & highBits)
            break;
    }
    return count;
}

constexpr std::string_view replacement = "\xEF\xBF\xBD"; // U+FFFD

/// Adds a text without U+0000.
void addMended(std::string &mended, std::string_view text)
{
    for (auto wrong = firstNotUtf8(text); wrong; wrong = firstNotUtf8(text)) {
        mended.append(text.substr(0, *wrong)).append(replacement);
        text.remove_prefix(*wrong + 1);
    }
    mended += text;
}

} // namespace

std::optional<std::size_t> firstNotUtf8(std::string_view text)
{
    for (std::size_t i = plainBytes(text); i < text.size();) {
        const auto sequence = sequenceOf(Byte(text[i]));
        if (!sequence || text.size() - i <= sequence->followers)
            return i;
        for (std::size_t k = 1; k <= sequence->followers; ++k) {
            const auto follower = Byte(text[i + k]);
            const Byte low = k == 1 ? sequence->low : Byte{0x80};
            const Byte high = k == 1 ? sequence->high : Byte{0xBF};
            if (follower < low || follower > high)
                return i;
        }
        i += sequence->followers + 1;
    }
    return std::nullopt;
}

std::string wellFormed(std::string_view text)
{
    std::string mended;
    for (auto null = text.find('\0'); null != text.npos; null = text.find('\0')) {
        addMended(mended, text.substr(0, null));
        mended += replacement;
        text.remove_prefix(null + 1);
    }
    addMended(mended, text);
    return mended;
}

} // namespace lastrivet
