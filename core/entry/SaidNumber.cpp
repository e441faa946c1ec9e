// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/SaidNumber.h"

namespace lastrivet::entry {

namespace {

struct Said {
    std::string_view word;
    std::int64_t number;
};

constexpr Said numbers[] = {
    {"one", 1},
    {"ein", 1},
    {"eine", 1},
    {"un", 1},
    {"une", 1},
    {"two", 2},
    {"zwei", 2},
    {"zwo", 2},
    {"deux", 2},
    {"three", 3},
    {"drei", 3},
    {"trois", 3},
    {"four", 4},
    {"vier", 4},
    {"quatre", 4},
    {"five", 5},
    {"fünf", 5},
    {"cinq", 5},
    {"six", 6},
    {"sechs", 6},
    {"seven", 7},
    {"sieben", 7},
    {"sept", 7},
    {"eight", 8},
    {"acht", 8},
    {"huit", 8},
    {"nine", 9},
    {"neun", 9},
    {"neuf", 9},
    {"ten", 10},
    {"zehn", 10},
    {"dix", 10},
    {"eleven", 11},
    {"elf", 11},
    {"onze", 11},
    {"twelve", 12},
    {"zwölf", 12},
    {"douze", 12},
    {"fifteen", 15},
    {"fünfzehn", 15},
    {"quinze", 15},
    {"twenty", 20},
    {"zwanzig", 20},
    {"vingt", 20},
    {"thirty", 30},
    {"dreißig", 30},
    {"dreissig", 30},
    {"trente", 30},
    {"forty", 40},
    {"vierzig", 40},
    {"quarante", 40},
    {"forty-five", 45},
    {"fortyfive", 45},
    {"quarantecinq", 45},
    {"quarante-cinq", 45},
    {"fünfundvierzig", 45},
    {"fifty", 50},
    {"fünfzig", 50},
    {"cinquante", 50},
    {"ninety", 90},
    {"neunzig", 90},
};

} // namespace

std::optional<std::int64_t> takeSaidNumber(std::string_view &text)
{
    // "sixty" begins with "six": the longest is meant.
    const Said *longest = nullptr;
    for (const Said &said : numbers) {
        if (text.starts_with(said.word) && (!longest || said.word.size() > longest->word.size()))
            longest = &said;
    }
    if (!longest)
        return std::nullopt;
    text.remove_prefix(longest->word.size());
    return longest->number;
}

bool isSaidNumber(std::string_view word)
{
    return takeSaidNumber(word) && word.empty();
}

} // namespace lastrivet::entry
