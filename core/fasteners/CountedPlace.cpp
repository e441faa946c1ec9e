// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fasteners/CountedPlace.h"

#include "core/base/CaseFold.h"
#include "core/base/CountWords.h"
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
    if (error != std::errc{})
        return std::nullopt;
    const auto behind = words.substr(std::size_t(end - words.data()));
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
