// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/airframe/PartPlaces.h"

#include "core/entry/Fold.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string>

namespace lastrivet::airframe {

namespace {

struct Row {
    std::string_view words;
    AircraftKind kind;
};

using enum AircraftKind;

/// As builders write it in English, German and French; the first that a text holds counts.
constexpr std::array rows{
    Row{"biplane", Biplane},       Row{"doppeldecker", Biplane},    Row{"biplan", Biplane},
    Row{"canard", Canard},         Row{"tail-first", Canard},       Row{"tail first", Canard},
    Row{"entenflug", Canard},      Row{"high-wing", HighWing},      Row{"high wing", HighWing},
    Row{"parasol", HighWing},      Row{"shoulder-wing", HighWing},  Row{"shoulder wing", HighWing},
    Row{"hochdecker", HighWing},   Row{"schulterdecker", HighWing}, Row{"aile haute", HighWing},
    Row{"ailes hautes", HighWing}, Row{"low-wing", LowWing},        Row{"low wing", LowWing},
    Row{"mid-wing", LowWing},      Row{"tiefdecker", LowWing},      Row{"mitteldecker", LowWing},
    Row{"aile basse", LowWing},    Row{"ailes basses", LowWing},
};

std::optional<AircraftKind> kindNamed(std::string_view text)
{
    const std::string small = entry::folded(text);
    const auto row = std::ranges::find_if(
        rows, [&](const Row &known) { return small.find(known.words) != std::string::npos; });
    return row == rows.end() ? std::nullopt : std::optional(row->kind);
}

/// Struts hold up high wings; only biplanes have a lower wing.
AircraftKind kindByParts(const Records &records)
{
    bool hasStrut = false;
    for (const Component &part : records.components) {
        if (part.withdrawn_on)
            continue;
        const auto spot = placeNamed(part.name).spot;
        if (spot == Spot::LowerWing)
            return Biplane;
        if (spot == Spot::Foreplane)
            return Canard;
        const std::string name = entry::folded(part.name);
        hasStrut |= name.find("lift strut") != std::string::npos ||
                    name.find("wing strut") != std::string::npos ||
                    name.find("flügelstrebe") != std::string::npos ||
                    name.find("hauban d") != std::string::npos;
    }
    return hasStrut ? HighWing : LowWing;
}

} // namespace

AircraftKind kindOfAircraft(const Records &records)
{
    for (const std::string *text : {&records.project.aircraft_type, &records.project.model}) {
        if (const auto kind = kindNamed(*text))
            return *kind;
    }
    return kindByParts(records);
}

} // namespace lastrivet::airframe
