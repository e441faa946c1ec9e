// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fasteners/ThreadText.h"

#include "core/base/CaseFold.h"
#include "core/base/Digits.h"
#include "core/base/Hyphens.h"
#include "core/base/ParseNumber.h"
#include "core/base/Trimmed.h"

#include <algorithm>
#include <cstddef>

namespace lastrivet::fasteners {

namespace {

constexpr std::string_view figures = "0123456789";

std::size_t behindBlanks(std::string_view text, std::size_t at)
{
    return std::min(text.find_first_not_of(' ', at), text.size());
}

bool isDigitAt(std::string_view text, std::size_t at)
{
    return at < text.size() && isDigit(text[at]);
}

/// "10-32" of "No. 10-32" and "# 10-32".
std::string_view withoutNumberWord(std::string_view words)
{
    const auto number = words.find_first_of(figures);
    if (number == std::string_view::npos)
        return words;
    const std::string said = folded(words.substr(0, number));
    const std::string_view word = trimmed(said);
    // "#10-32" is in one word already.
    const bool isNumberWord = word == "no." || word == "no" || word == "nr." || word == "nr" ||
                              (word == "#" && said != word);
    return isNumberWord ? words.substr(number) : words;
}

std::string withDashJoined(std::string words)
{
    // The first one is the thread's: behind it may stand that of its series, "UNF-3A".
    auto at = std::string::npos;
    std::string_view dash;
    for (const std::string_view known : hyphens) {
        if (const auto found = words.find(known); found < at) {
            at = found;
            dash = known;
        }
    }
    if (at == 0 || at == std::string::npos)
        return words;
    const auto before = words.find_last_not_of(' ', at - 1);
    const auto behind = behindBlanks(words, at + dash.size());
    if (before != std::string::npos && isDigit(words[before]) && isDigitAt(words, behind))
        words.replace(before + 1, behind - before - 1, "-");
    return words;
}

/// Metric pitches are a quarter of the diameter or less (ISO 261); the shortest bolts are longer.
bool isPitch(std::string_view pitch, std::string_view diameter)
{
    const auto threads = parseNumber<double>(pitch);
    const auto size = parseNumber<double>(diameter);
    return threads && size && *threads * 4 <= *size;
}

std::string withPitchJoined(std::string words)
{
    if (words.empty() || (words.front() != 'M' && words.front() != 'm') || !isDigitAt(words, 1))
        return words;
    const auto endOfSize = std::min(words.find_first_not_of(figures, 1), words.size());
    const std::string_view rest = std::string_view(words).substr(behindBlanks(words, endOfSize));
    for (const std::string_view times : {"x", "X", "×"}) {
        if (!rest.starts_with(times))
            continue;
        const auto behind = rest.substr(behindBlanks(rest, times.size()));
        const auto end = std::min(behind.find(' '), behind.size());
        std::string pitch(behind.substr(0, end));
        std::ranges::replace(pitch, ',', '.');
        const std::string size = words.substr(1, endOfSize - 1);
        if (isPitch(pitch, size))
            return words.substr(0, endOfSize) + 'x' + pitch + std::string(behind.substr(end));
    }
    return words;
}

} // namespace

std::string withThreadInOneWord(std::string_view words)
{
    return withPitchJoined(withPlainHyphens(withDashJoined(std::string(withoutNumberWord(words)))));
}

} // namespace lastrivet::fasteners
