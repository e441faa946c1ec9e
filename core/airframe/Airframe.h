// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/airframe/PartPlaces.h"
#include "core/readiness/Answer.h"
#include "core/records/Records.h"

#include <optional>
#include <vector>

namespace lastrivet::airframe {

/// How one zone of the drawing stands.
struct ZoneStanding {
    Zone zone = Zone::EngineBay;
    /// Parts that lie in it, wherever in the tree.
    std::int64_t parts = 0;
    /// Region closings of these parts, or that enclose one of them by name.
    std::int64_t closings = 0;
    /// Empty while no closing is recorded.
    std::optional<readiness::State> state;
    /// False while none of the closings has seen work.
    bool begun = false;
    /// The closing that gives the state; of several the one with the fewest must blockers.
    Id<Closing> worst;
    /// The part of that closing, else the first part of the zone; none in an empty zone.
    Id<Component> part;

    friend bool operator==(const ZoneStanding &, const ZoneStanding &) = default;
};

/// The aeroplane as a drawing shows it.
struct Airframe {
    AircraftKind kind = AircraftKind::LowWing;
    /// Every zone of the drawing, in order; of nose and tail wheel the one that has parts, or the
    /// usual one of the kind.
    std::vector<ZoneStanding> zones;
    /// Live parts of which nothing says where they are, in the order of the tree.
    std::vector<Id<Component>> elsewhere;
    /// Closings of those that were begun and must stay open.
    std::int64_t open_elsewhere = 0;
};

Airframe airframe(const Records &records, const readiness::Answer &answer, AircraftKind kind);

} // namespace lastrivet::airframe
