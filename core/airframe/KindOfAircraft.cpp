// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/airframe/PartPlaces.h"

#include "core/base/CaseFold.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

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
    const std::string small = folded(text);
    const auto row = std::ranges::find_if(
        rows, [&](const Row &known) { return small.find(known.words) != std::string::npos; });
    return row == rows.end() ? std::nullopt : std::optional(row->kind);
}

/// What a strut is called, what says in the same name that it holds up a wing, and what that it
/// does not.
struct StrutWords {
    std::string_view strut;
    std::vector<std::string_view> wing;
    std::vector<std::string_view> other;
};

bool isOfWingStrut(const std::string &name)
{
    static const std::array families{
        StrutWords{"strut",
                   {"lift", "wing", "root"},
                   {"gear", "oleo", "undercarriage", "compression", "drag"}},
        StrutWords{"strebe", {"flügel", "wurzel"}, {"fahrwerk", "federbein", "druckstrebe"}},
        StrutWords{"mât", {"aile", "emplanture"}, {"pitot", "antenne"}},
        StrutWords{"hauban d", {"hauban d"}, {}},
    };
    const auto holds = [&name](std::string_view word) {
        return name.find(word) != std::string::npos;
    };
    return std::ranges::any_of(families, [&](const StrutWords &words) {
        return holds(words.strut) && std::ranges::any_of(words.wing, holds) &&
               std::ranges::none_of(words.other, holds);
    });
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
        hasStrut |= isOfWingStrut(folded(part.name));
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
