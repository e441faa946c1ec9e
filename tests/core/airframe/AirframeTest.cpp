// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/airframe/Airframe.h"

#include "core/readiness/Readiness.h"
#include "tests/support/ProjectBuilder.h"

#include <algorithm>

#include <catch2/catch.hpp>

namespace lastrivet::airframe {

namespace {

struct Bench : test::ProjectBuilder {
    Id<Component> part(std::string_view name, ComponentKind kind, std::string_view zone = {},
                       Id<Component> inside = {})
    {
        Component part;
        part.name = name;
        part.kind = kind;
        part.zone = zone;
        part.parent_id = inside;
        return add(part);
    }
    Airframe drawn(AircraftKind kind = AircraftKind::HighWing) const
    {
        return airframe(records, readiness::readiness(records, profile, test::on("2026-03-14")),
                        kind);
    }
    /// Where a part is, as the names of its zones.
    std::string zonesOf(Id<Component> part, AircraftKind kind = AircraftKind::HighWing) const
    {
        const ZoneSet zones = zonesAt(PartPlaces(records).of(part), kind);
        std::string names;
        for (std::size_t i = 0; i < Words<Zone>::list.size(); ++i) {
            if (zones.contains(Zone(i)))
                names += (names.empty() ? "" : " ") + std::string(word(Zone(i)));
        }
        return names;
    }
};

ZoneStanding at(const Airframe &drawn, Zone zone)
{
    const auto found = std::ranges::find(drawn.zones, zone, &ZoneStanding::zone);
    REQUIRE(found != drawn.zones.end());
    return *found;
}

bool has(const Airframe &drawn, Zone zone)
{
    return std::ranges::find(drawn.zones, zone, &ZoneStanding::zone) != drawn.zones.end();
}

} // namespace

TEST_CASE("A part lies where its zone says, and small parts are not where their names point")
{
    Bench bench;
    const auto wing = bench.part("Left wing", ComponentKind::LiftingSurface, "left wing");
    const auto rib =
        bench.part("Rib 7, aileron inboard hinge", ComponentKind::Part, "left wing, bay 6", wing);
    CHECK(bench.zonesOf(wing) == "left_wing");
    CHECK(bench.zonesOf(rib) == "left_wing");
    const auto aileron =
        bench.part("Left aileron", ComponentKind::ControlSurface, "left wing, trailing edge");
    CHECK(bench.zonesOf(aileron) == "left_aileron");
    const auto tank =
        bench.part("Left fuel tank", ComponentKind::FuelTank, "left wing, bay 2", wing);
    CHECK(bench.zonesOf(tank) == "left_tank");
    const auto header = bench.part("Header tank", ComponentKind::FuelTank, "behind the seats");
    CHECK(bench.zonesOf(header) == "fuselage_tank");
}

TEST_CASE("A part without a zone lies where the parts above it do")
{
    Bench bench;
    const auto aileron = bench.part("Left aileron", ComponentKind::ControlSurface);
    const auto spar = bench.part("Spar", ComponentKind::Part, {}, aileron);
    const auto hinge = bench.part("Hinge pin", ComponentKind::Part, {}, spar);
    CHECK(bench.zonesOf(hinge) == "left_aileron");
    const auto tail = bench.part("Tail", ComponentKind::Assembly);
    const auto fin = bench.part("Fin", ComponentKind::LiftingSurface, "tail", tail);
    CHECK(bench.zonesOf(fin) == "fin");
    CHECK(bench.zonesOf(tail) == "stabiliser elevator fin rudder");
    CHECK(bench.zonesOf(bench.part("Rib", ComponentKind::Part, "tail", fin)) == "fin");
}

TEST_CASE("A drawing without a zone shows its parts in the one that stands in for it")
{
    Bench bench;
    const auto lower = bench.part("Lower left wing", ComponentKind::LiftingSurface);
    CHECK(bench.zonesOf(lower, AircraftKind::Biplane) == "lower_left_wing");
    CHECK(bench.zonesOf(lower, AircraftKind::LowWing) == "left_wing");
    const auto canard = bench.part("Canard", ComponentKind::LiftingSurface);
    CHECK(bench.zonesOf(canard, AircraftKind::Canard) == "foreplane");
    CHECK(bench.zonesOf(canard, AircraftKind::LowWing) == "stabiliser");
}

TEST_CASE("A zone shows the worst of its closings, and of none nothing")
{
    Bench bench;
    const auto wing = bench.part("Left wing", ComponentKind::LiftingSurface);
    const auto first = bench.closing(wing);
    CHECK(at(bench.drawn(), Zone::LeftWing).state == readiness::State::Clear);
    CHECK_FALSE(at(bench.drawn(), Zone::LeftWing).begun);
    CHECK_FALSE(at(bench.drawn(), Zone::RightWing).state);
    bench.session(wing, "2026-03-10", 60);
    CHECK(at(bench.drawn(), Zone::LeftWing).begun);
    const auto rib = bench.part("Rib 3", ComponentKind::Part, {}, wing);
    const auto second = bench.closing(rib);
    bench.session(rib, "2026-03-11", 60);
    bench.squawk(rib, "2026-03-12");
    const auto standing = at(bench.drawn(), Zone::LeftWing);
    CHECK(standing.state == readiness::State::Hold);
    CHECK(standing.closings == 2);
    CHECK(standing.parts == 2);
    // The squawk stands against both; both need the same number of things.
    CHECK((standing.worst == first || standing.worst == second));
}

TEST_CASE("What a closing of another part encloses by name stands under it, too")
{
    Bench bench;
    const auto fuselage = bench.part("Fuselage", ComponentKind::FuselageSection);
    const auto rear = bench.part("Rear fuselage", ComponentKind::FuselageSection, {}, fuselage);
    const auto covering = bench.part("Covering", ComponentKind::Part, "shelf");
    const auto closing = bench.closing(covering, {rear});
    CHECK(at(bench.drawn(), Zone::RearFuselage).worst == closing);
    CHECK_FALSE(at(bench.drawn(), Zone::Cockpit).worst);
}

TEST_CASE("Parts of which nothing says where they are do not get lost")
{
    Bench bench;
    const auto radio = bench.part("Radio", ComponentKind::Electrical);
    CHECK(bench.drawn().elsewhere == std::vector{radio});
    CHECK(bench.drawn().open_elsewhere == 0);
    bench.closing(radio);
    bench.session(radio, "2026-03-10", 60);
    bench.squawk(radio, "2026-03-12");
    CHECK(bench.drawn().open_elsewhere == 1);
    bench.withdraw(radio);
    CHECK(bench.drawn().elsewhere.empty());
}

TEST_CASE("The wheel is drawn under the nose or the tail, as the parts have it")
{
    Bench bench;
    CHECK(has(bench.drawn(AircraftKind::HighWing), Zone::TailWheel));
    CHECK_FALSE(has(bench.drawn(AircraftKind::HighWing), Zone::NoseWheel));
    CHECK(has(bench.drawn(AircraftKind::LowWing), Zone::NoseWheel));
    bench.part("Nose leg", ComponentKind::Undercarriage);
    CHECK(has(bench.drawn(AircraftKind::HighWing), Zone::NoseWheel));
    CHECK_FALSE(has(bench.drawn(AircraftKind::HighWing), Zone::TailWheel));
}

TEST_CASE("The kind of aircraft is read from its type, else from its parts")
{
    Bench bench;
    CHECK(kindOfAircraft(bench.records) == AircraftKind::LowWing);
    bench.part("Left lift strut", ComponentKind::Part);
    CHECK(kindOfAircraft(bench.records) == AircraftKind::HighWing);
    bench.part("Lower left wing", ComponentKind::LiftingSurface);
    CHECK(kindOfAircraft(bench.records) == AircraftKind::Biplane);
    bench.records.project.aircraft_type = "Zweisitziger Tiefdecker";
    CHECK(kindOfAircraft(bench.records) == AircraftKind::LowWing);
    bench.records.project.aircraft_type = "avion de tourisme à aile haute";
    CHECK(kindOfAircraft(bench.records) == AircraftKind::HighWing);
}

TEST_CASE("Struts of wings tell of a high wing, in the words of the starters; others do not")
{
    const auto kindWith = [](std::string_view name) {
        Bench bench;
        bench.part(name, ComponentKind::Part);
        return kindOfAircraft(bench.records);
    };
    for (const std::string_view name :
         {"Left strut and root fittings", "Wing and strut attachments", "Left wing struts",
          "Streben- und Wurzelbeschläge links", "Streben, Flügel links", "Mâts, aile gauche",
          "Ferrures de mât et d’emplanture, aile gauche"}) {
        CAPTURE(name);
        CHECK(kindWith(name) == AircraftKind::HighWing);
    }
    for (const std::string_view name :
         {"Left drag wires and compression struts", "Legs, struts and attachment",
          "Left wing gear strut", "Auskreuzung und Druckstreben links",
          "Beine, Streben und Befestigung", "Mât de pitot, aile gauche"}) {
        CAPTURE(name);
        CHECK(kindWith(name) == AircraftKind::LowWing);
    }
}

} // namespace lastrivet::airframe
