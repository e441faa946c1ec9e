// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workshop/TorqueUnitWords.h"

#include "core/workshop/Quantities.h"

#include <algorithm>
#include <array>
#include <string>

namespace lastrivet::workshop {

namespace {

// With the French pouce and pied.
constexpr std::array<std::string_view, 12> inchPoundWords{"inlb",  "inlbs", "lbin",  "lbsin",
                                                          "inlbf", "lbfin", "polb",  "polbs",
                                                          "lbpo",  "lbspo", "polbf", "lbfpo"};
constexpr std::array<std::string_view, 12> footPoundWords{"ftlb",  "ftlbs", "lbft",  "lbsft",
                                                          "ftlbf", "lbfft", "pilb",  "pilbs",
                                                          "lbpi",  "lbspi", "pilbf", "lbfpi"};
constexpr std::array<std::string_view, 15> foreignWords{"danm", "ncm",  "knm",   "kgm",  "kgfm",
                                                        "kgcm", "kpm",  "kgfcm", "ozin", "mkg",
                                                        "mkp",  "mdan", "kpcm",  "cmkg", "cmkp"};

bool isAny(std::string_view word, const auto &words)
{
    return std::find(words.begin(), words.end(), word) != words.end();
}

/// Small letters without what stands between them: "in-lb", "In lb", "in.-lb", "in·lb", also with
/// the dot, the hyphen or the blank of a printed drawing.
std::string joined(std::string_view words)
{
    std::string word(words);
    for (const std::string_view between :
         {" ", "-", ".", "·", "*", "\u22C5", "\u2219", "\u2010", "\u2011", "\u00A0", "\u202F"}) {
        for (auto at = word.find(between); at != std::string::npos; at = word.find(between))
            word.erase(at, between.size());
    }
    for (char &c : word)
        c = c >= 'A' && c <= 'Z' ? char(c - 'A' + 'a') : c;
    return word;
}

} // namespace

std::optional<TorqueUnit> torqueUnitSaid(std::string_view words)
{
    const auto word = joined(words);
    if (isAny(word, inchPoundWords))
        return TorqueUnit::InchPounds;
    if (isAny(word, footPoundWords))
        return TorqueUnit::FootPounds;
    return word == "nm" ? std::optional(TorqueUnit::NewtonMetres) : std::nullopt;
}

bool isForeignTorqueUnit(std::string_view words)
{
    return isAny(joined(words), foreignWords);
}

double inchPoundsIn(TorqueUnit unit)
{
    constexpr double inchPoundsPerFootPound = 12;
    switch (unit) {
    case TorqueUnit::InchPounds:
        return 1;
    case TorqueUnit::FootPounds:
        return inchPoundsPerFootPound;
    case TorqueUnit::NewtonMetres:
        return 1 / newtonMetresOfInchPound;
    }
    return 1;
}

} // namespace lastrivet::workshop
