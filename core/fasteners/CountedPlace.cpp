// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fasteners/CountedPlace.h"

#include "core/base/CaseFold.h"
#include "core/base/CountWords.h"
#include "core/base/Digits.h"
#include "core/base/Trimmed.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdint>
#include <string>

namespace lastrivet::fasteners {

namespace {

/// More than one fastener; of German and English words the end of a longer one, too.
constexpr std::array<std::string_view, 15> ends{
    "bolts",   "screws", "nuts",     "rivets", "washers", "studs",   "schrauben", "bolzen",
    "muttern", "nieten", "scheiben", "stifte", "splinte", "boulons", "écrous"};
constexpr std::array<std::string_view, 7> wholeWords{"pins",      "vis",     "rondelles", "axes",
                                                     "goupilles", "goujons", "niete"};

/// Behind a number they make it a measure, a voltage or an hour of the clock, which says where.
constexpr std::array<std::string_view, 29> measures{
    "mm",   "cm",      "m",       "in",      "inch", "ft",     "zoll",  "pouces", "po", "v",
    "a",    "w",       "h",       "g",       "kg",   "lb",     "oz",    "l",      "°",  "deg",
    "grad", "degrees", "o'clock", "o’clock", "uhr",  "heures", "heure", "°c",     "%"};

bool isAny(std::string_view word, const auto &words)
{
    return std::find(words.begin(), words.end(), word) != words.end();
}

bool areFasteners(std::string_view word)
{
    return isAny(word, wholeWords) ||
           std::any_of(ends.begin(), ends.end(),
                       [&](std::string_view end) { return word.ends_with(end); });
}

bool beginsWithLetter(std::string_view word)
{
    const auto first = static_cast<unsigned char>(word.front());
    return (first >= 'a' && first <= 'z') || first >= 0x80;
}

/// Takes the groups of "1 000" and "1.000" behind its first digits, and adds them to the number.
void takeThousands(std::int64_t &count, std::string_view &behind)
{
    constexpr std::array<std::string_view, 6> partings{" ", ".", "'", "’", "\u00a0", "\u202f"};
    for (int group = 0; group < 2; ++group) {
        const auto parting =
            std::find_if(partings.begin(), partings.end(),
                         [&](std::string_view between) { return behind.starts_with(between); });
        if (parting == partings.end() || count < 1 || (group == 0 && count > 999))
            return;
        const auto digits = behind.substr(parting->size(), 3);
        const auto rest = behind.substr(std::min(parting->size() + 3, behind.size()));
        if (digits.size() < 3 || !isAllDigits(digits) || (!rest.empty() && isDigit(rest.front())))
            return;
        std::int64_t more = 0;
        std::from_chars(digits.data(), digits.data() + digits.size(), more);
        count = count * 1000 + more;
        behind = rest;
    }
}

std::string_view takeLastWord(std::string_view &words)
{
    const auto blank = words.rfind(' ');
    const auto last = blank == std::string_view::npos ? words : words.substr(blank + 1);
    words.remove_suffix(last.size());
    words = trimmed(words);
    return last;
}

/// The number of "x4" and "4pcs"; 0 for anything else.
std::int64_t countIn(std::string_view word)
{
    for (const std::string_view sign : {"x", "×", "*"}) {
        if (word.starts_with(sign) && isAllDigits(word.substr(sign.size())))
            word.remove_prefix(sign.size());
    }
    std::int64_t count = 0;
    const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), count);
    const auto behind = word.substr(std::size_t(end - word.data()));
    return error == std::errc{} && (behind.empty() || isAny(behind, countWords)) ? count : 0;
}

/// "M6" and "1/4", behind which "x 20" is a length.
bool isSize(std::string_view word)
{
    return word.find('/') != std::string_view::npos ||
           ((word.starts_with('m') || word.starts_with('M')) && isAllDigits(word.substr(1)));
}

/// What stands behind a place: "hinge x 4", "hinge x4" and "hinge 4 pcs".
struct CountBehind {
    std::int64_t count = 0;
    std::string_view place{};
};

CountBehind countBehind(std::string_view words)
{
    auto place = trimmed(words);
    const std::string last = folded(takeLastWord(place));
    auto shorter = place;
    const std::string both = folded(takeLastWord(shorter)) + last;
    CountBehind found{isAllDigits(last) ? 0 : countIn(last), place};
    if (found.count == 0 && !isAllDigits(both))
        found = {countIn(both), shorter};
    auto before = found.place;
    return isSize(takeLastWord(before)) ? CountBehind{} : found;
}

Message askWhich(std::string_view words, std::int64_t count, std::string_view rest)
{
    return {"“{0}” may be {1} fasteners or one: write {1} x {2}, or 1 x {0}.",
            {std::string(words), std::to_string(count), std::string(rest)}};
}

} // namespace

std::optional<Message> takePlace(Fastener &fastener, std::string_view words)
{
    fastener.place = words;
    std::int64_t count = 0;
    const auto [end, error] = std::from_chars(words.data(), words.data() + words.size(), count);
    if (error != std::errc{}) {
        const auto found = countBehind(words);
        return found.count > 1 && !found.place.empty()
                   ? std::optional(askWhich(words, found.count, found.place))
                   : std::nullopt;
    }
    auto behind = words.substr(std::size_t(end - words.data()));
    takeThousands(count, behind);
    const auto rest = trimmed(behind);
    const auto typed = rest.substr(0, rest.find(' '));
    const std::string word = folded(typed);
    const bool isApart = !word.empty() && rest.size() < behind.size();
    const bool isCounted = isAny(word, countWords);
    if (!isCounted && !(isApart && areFasteners(word))) {
        const bool mayBeCount =
            isApart && count > 1 && beginsWithLetter(word) && !isAny(word, measures);
        return mayBeCount ? std::optional(askWhich(words, count, rest)) : std::nullopt;
    }
    if (count < 1)
        return Message{"A line is for one fastener or more.", {}};
    fastener.quantity = count;
    fastener.place = isCounted ? trimmed(rest.substr(typed.size())) : rest;
    return fastener.place.empty() ? std::optional(Message{"Say where the fastener is.", {}})
                                  : std::nullopt;
}

} // namespace lastrivet::fasteners
