// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/airframe/AircraftKind.h"
#include "core/airframe/PlaceWords.h"
#include "core/airframe/Zone.h"
#include "core/records/Records.h"

#include <unordered_map>

namespace lastrivet::airframe {

/// In which zones each live part lies, by what its zone, its name, its kind and the parts above it
/// say.
///
/// A part's own zone comes first; the name counts for what is a thing of its own (a surface, a
/// tank, a section), because small parts are often named after what they meet.
class PartPlaces {
public:
    explicit PartPlaces(const Records &records);

    /// Empty for a part of which nothing says where it is.
    Place of(Id<Component> part) const;

private:
    std::unordered_map<std::int64_t, Place> m_places;
};

/// The zones of a place in a drawing of this kind: where the drawing has no such zone, the one that
/// stands in for it. A region gives all its zones; no spot gives none.
ZoneSet zonesAt(const Place &place, AircraftKind kind);

/// The zones that a drawing of this kind has.
ZoneSet zonesDrawn(AircraftKind kind);

/// The kind that the aircraft type speaks of, else the one that the parts speak of; a low wing when
/// nothing tells.
AircraftKind kindOfAircraft(const Records &records);

} // namespace lastrivet::airframe
