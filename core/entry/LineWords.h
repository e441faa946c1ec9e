// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <array>
#include <string_view>

// The small words of a log line, folded, in English, German and French: people write the language
// that they think in, whatever the screen speaks.
namespace lastrivet::entry::words {

constexpr std::array<std::string_view, 3> with{"with", "mit", "avec"};
constexpr std::array<std::string_view, 3> by{"by", "von", "par"};
constexpr std::array<std::string_view, 3> join{"and", "und", "et"};
constexpr std::array<std::string_view, 4> paid{"paid", "bezahlt", "payé", "payée"};
constexpr std::array<std::string_view, 6> done{"done", "erledigt", "fertig",
                                               "fait", "faits",    "terminé"};
constexpr std::array<std::string_view, 7> at{"at", "from", "um", "ab", "von", "à", "de"};
/// Of these, what stands before a point in time and never before a length of it.
constexpr std::array<std::string_view, 4> point{"at", "um", "ab", "à"};
constexpr std::array<std::string_view, 4> until{"to", "until", "bis", "à"};
/// Before a day: "on Friday", "am Freitag".
constexpr std::array<std::string_view, 3> on{"on", "am", "le"};

/// What is counted in a note: "2h 12 rivets" may be two hours, and twelve of them.
constexpr std::array<std::string_view, 24> counted{
    "rivets", "bolts",    "screws",    "nuts",      "washers",   "holes",
    "ribs",   "clamps",   "nutplates", "nieten",    "schrauben", "muttern",
    "bolzen", "scheiben", "löcher",    "bohrungen", "rippen",    "boulons",
    "vis",    "écrous",   "rondelles", "trous",     "nervures",  "pins"};

constexpr std::array<std::string_view, 4> squawk{"squawk", "sq", "beanstandung", "anomalie"};

template <std::size_t count>
constexpr bool isOneOf(std::string_view word, const std::array<std::string_view, count> &known)
{
    return std::find(known.begin(), known.end(), word) != known.end();
}

} // namespace lastrivet::entry::words
