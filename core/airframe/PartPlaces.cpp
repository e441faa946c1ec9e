// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/airframe/PartPlaces.h"

#include "core/readiness/PartTree.h"

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <utility>

namespace lastrivet::airframe {

namespace {

/// What a kind of part says by itself.
std::optional<Spot> spotOf(ComponentKind kind)
{
    switch (kind) {
    case ComponentKind::LiftingSurface:
        return Spot::Wing;
    case ComponentKind::FuselageSection:
        return Spot::Fuselage;
    case ComponentKind::FuelTank:
        return Spot::Tank;
    case ComponentKind::EngineInstallation:
        return Spot::EngineBay;
    case ComponentKind::Undercarriage:
        return Spot::Gear;
    case ComponentKind::Cabin:
        return Spot::Cockpit;
    default:
        return std::nullopt;
    }
}

/// True for kinds whose names say what they are, not what they are fixed to.
bool isThingOfItsOwn(ComponentKind kind)
{
    return kind == ComponentKind::ControlSurface || kind == ComponentKind::Assembly ||
           spotOf(kind).has_value();
}

bool isVague(std::optional<Spot> spot)
{
    return !spot || spot == Spot::Tail || spot == Spot::Fuselage || spot == Spot::Gear;
}

/// `spot`, said more exactly where `closer` is a part of it.
std::optional<Spot> narrowed(std::optional<Spot> spot, std::optional<Spot> closer)
{
    if (!spot || !closer || !liesIn(*closer, *spot))
        return spot ? spot : closer;
    if (closer != Spot::Tank)
        return closer;
    return *spot == Spot::Wing || *spot == Spot::UpperWing || *spot == Spot::LowerWing
               ? Spot::WingTank
               : Spot::FuselageTank;
}

bool agree(Spot a, Spot b)
{
    return a == b || liesIn(a, b) || liesIn(b, a);
}

/// Of something whose name says what it is: the name wins over where it is said to be.
std::optional<Spot> spotOfThing(const Component &part, const Place &name,
                                std::optional<Spot> around)
{
    if (name.spot && around && !agree(*name.spot, *around))
        return name.spot;
    const auto spot = narrowed(around, name.spot);
    const auto kind = spotOf(part.kind);
    // A kind alone says less than words, but a tank in a wing is not the wing.
    return kind == Spot::Tank || kind == Spot::Gear || !spot ? narrowed(spot, kind) : spot;
}

Place placeOf(const Component &part, const Place &above)
{
    const Place said = placeNamed(part.zone);
    const Place name = placeNamed(part.name);
    const auto around = said.spot ? narrowed(said.spot, above.spot) : above.spot;
    Place place{around, said.side};
    if (isThingOfItsOwn(part.kind))
        place.spot = spotOfThing(part, name, around);
    else if (isVague(around))
        place.spot = narrowed(around, name.spot);
    if (!place.side)
        place.side = name.side ? name.side : above.side;
    return place;
}

void add(ZoneSet &zones, const Place &place, Zone left, Zone right)
{
    if (place.side != Side::Right)
        zones.insert(left);
    if (place.side != Side::Left)
        zones.insert(right);
}

/// What there is on the left and on the right.
std::optional<std::pair<Zone, Zone>> bothSides(const Place &place)
{
    switch (*place.spot) {
    case Spot::Wing:
    case Spot::UpperWing:
        return std::pair(Zone::LeftWing, Zone::RightWing);
    case Spot::LowerWing:
        return std::pair(Zone::LowerLeftWing, Zone::LowerRightWing);
    case Spot::WingTank:
        return std::pair(Zone::LeftTank, Zone::RightTank);
    case Spot::Tank:
        if (!place.side)
            return std::nullopt;
        return std::pair(Zone::LeftTank, Zone::RightTank);
    case Spot::Aileron:
        return std::pair(Zone::LeftAileron, Zone::RightAileron);
    case Spot::Flap:
        return std::pair(Zone::LeftFlap, Zone::RightFlap);
    case Spot::Gear:
    case Spot::MainWheel:
        return std::pair(Zone::LeftMainWheel, Zone::RightMainWheel);
    default:
        return std::nullopt;
    }
}

/// Where a spot lies that is there once.
ZoneSet inTheMiddle(Spot spot)
{
    static const std::map<Spot, ZoneSet> zones{
        {Spot::Tail, {Zone::Stabiliser, Zone::Elevator, Zone::Fin, Zone::Rudder}},
        {Spot::Fuselage, {Zone::Cockpit, Zone::CentreFuselage, Zone::RearFuselage}},
        {Spot::Tank, {Zone::FuselageTank}},
        {Spot::FuselageTank, {Zone::FuselageTank}},
        {Spot::Stabiliser, {Zone::Stabiliser}},
        {Spot::Elevator, {Zone::Elevator}},
        {Spot::Fin, {Zone::Fin}},
        {Spot::Rudder, {Zone::Rudder}},
        {Spot::Foreplane, {Zone::Foreplane}},
        {Spot::EngineBay, {Zone::EngineBay}},
        {Spot::Cockpit, {Zone::Cockpit}},
        {Spot::CentreFuselage, {Zone::CentreFuselage}},
        {Spot::RearFuselage, {Zone::RearFuselage}},
        {Spot::NoseWheel, {Zone::NoseWheel}},
        {Spot::TailWheel, {Zone::TailWheel}},
    };
    const auto found = zones.find(spot);
    return found == zones.end() ? ZoneSet{} : found->second;
}

/// Before anything stands in for what a drawing lacks.
ZoneSet plainZones(const Place &place)
{
    const auto sides = bothSides(place);
    if (!sides)
        return inTheMiddle(*place.spot);
    ZoneSet zones;
    add(zones, place, sides->first, sides->second);
    return zones;
}

void replace(ZoneSet &zones, Zone missing, Zone standIn)
{
    if (!zones.contains(missing))
        return;
    zones.remove(missing);
    zones.insert(standIn);
}

} // namespace

PartPlaces::PartPlaces(const Records &records)
{
    const readiness::PartTree tree(records.components);
    // Parts follow their parents.
    for (readiness::Place i = 0; i < tree.size(); ++i) {
        const auto parent = tree.parentOf(i);
        const Place above = parent ? of(tree.part(*parent).id) : Place{};
        m_places.emplace(tree.part(i).id.value(), placeOf(tree.part(i), above));
    }
}

Place PartPlaces::of(Id<Component> part) const
{
    const auto place = m_places.find(part.value());
    return place == m_places.end() ? Place{} : place->second;
}

ZoneSet zonesDrawn(AircraftKind kind)
{
    ZoneSet zones;
    for (std::size_t i = 0; i < Words<Zone>::list.size(); ++i)
        zones.insert(Zone(i));
    if (kind != AircraftKind::Biplane) {
        zones.remove(Zone::LowerLeftWing);
        zones.remove(Zone::LowerRightWing);
    }
    zones.remove(kind == AircraftKind::Canard ? Zone::Stabiliser : Zone::Foreplane);
    return zones;
}

ZoneSet zonesAt(const Place &place, AircraftKind kind)
{
    if (!place.spot)
        return {};
    ZoneSet zones = plainZones(place);
    if (kind == AircraftKind::Canard)
        replace(zones, Zone::Stabiliser, Zone::Foreplane);
    else
        replace(zones, Zone::Foreplane, Zone::Stabiliser);
    if (kind != AircraftKind::Biplane) {
        replace(zones, Zone::LowerLeftWing, Zone::LeftWing);
        replace(zones, Zone::LowerRightWing, Zone::RightWing);
    }
    return zones;
}

} // namespace lastrivet::airframe
