// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/airframe/PlaceWords.h"

#include "core/airframe/PartPlaces.h"

#include <string>

#include <catch2/catch.hpp>

namespace lastrivet::airframe {

namespace {

struct Sample {
    const char *text;
    std::optional<Spot> spot;
    std::optional<Side> side;
};

constexpr auto left = Side::Left;
constexpr auto right = Side::Right;
constexpr std::nullopt_t none = std::nullopt;

} // namespace

TEST_CASE("Places are understood in English, German and French")
{
    const Sample samples[] = {
        {"left wing, bay 3", Spot::Wing, left},
        {"wings", Spot::Wing, none},
        {"Right aileron", Spot::Aileron, right},
        {"starboard flap", Spot::Flap, right},
        {"forward of the firewall", Spot::EngineBay, none},
        {"rear fuselage, top", Spot::RearFuselage, none},
        {"TAILWHEEL and spring", Spot::TailWheel, none},
        {"tail", Spot::Tail, none},
        {"upper left wing", Spot::UpperWing, left},
        {"linker Flügel", Spot::Wing, left},
        {"Rechte Tragfläche", Spot::Wing, right},
        {"Querruder rechts", Spot::Aileron, right},
        {"Höhenruder", Spot::Elevator, none},
        {"HÖHENLEITWERK", Spot::Stabiliser, none},
        {"Seitenruder", Spot::Rudder, none},
        {"Rumpfheck", Spot::RearFuselage, none},
        {"Flügeltank links", Spot::WingTank, left},
        {"Brandspant", Spot::EngineBay, none},
        {"Spornrad", Spot::TailWheel, none},
        {"aile gauche", Spot::Wing, left},
        {"Volet droit", Spot::Flap, right},
        {"réservoir d’aile droite", Spot::WingTank, right},
        {"Dérive", Spot::Fin, none},
        {"gouverne de profondeur", Spot::Elevator, none},
        {"train d'atterrissage", Spot::Gear, none},
        {"fuselage arrière", Spot::RearFuselage, none},
        {"moteur", Spot::EngineBay, none},
    };
    for (const Sample &sample : samples) {
        INFO(sample.text);
        CHECK(placeNamed(sample.text) == Place{sample.spot, sample.side});
    }
}

TEST_CASE("A new project's zones are the same places in whichever language they are written")
{
    struct Zones {
        const char *english;
        const char *german;
        const char *french;
    };
    const Zones zones[] = {
        {"centre fuselage", "Mittelrumpf", "fuselage central"},
        {"cockpit", "Cockpit", "habitacle"},
        {"elevator", "Höhenruder", "gouverne de profondeur"},
        {"engine bay", "Motorraum", "compartiment moteur"},
        {"fin", "Seitenflosse", "dérive"},
        {"left aileron", "linkes Querruder", "aileron gauche"},
        {"left flap", "linke Landeklappe", "volet gauche"},
        {"left main wheel", "linkes Hauptrad", "train principal gauche"},
        {"left tank", "linker Flügeltank", "réservoir d’aile gauche"},
        {"left wing", "linker Flügel", "aile gauche"},
        {"nose wheel", "Bugrad", "roue avant"},
        {"rear fuselage", "Rumpfheck", "fuselage arrière"},
        {"right aileron", "rechtes Querruder", "aileron droit"},
        {"right flap", "rechte Landeklappe", "volet droit"},
        {"right main wheel", "rechtes Hauptrad", "train principal droit"},
        {"right tank", "rechter Flügeltank", "réservoir d’aile droit"},
        {"right wing", "rechter Flügel", "aile droite"},
        {"rudder", "Seitenruder", "gouverne de direction"},
        {"stabiliser", "Höhenflosse", "stabilisateur"},
        {"tail wheel", "Spornrad", "roulette de queue"},
    };
    for (const Zones &zone : zones) {
        INFO(zone.english);
        CHECK(placeNamed(zone.english).spot);
        CHECK(placeNamed(zone.german) == placeNamed(zone.english));
        CHECK(placeNamed(zone.french) == placeNamed(zone.english));
    }
}

TEST_CASE("Words that only look like places are none")
{
    for (const char *text : {"", "shelf 3", "final finish", "training", "copyright", "leftover",
                             "finish", "rails", "détail"}) {
        INFO(text);
        CHECK(placeNamed(text) == Place{});
    }
}

TEST_CASE("Left and right together are both sides")
{
    CHECK(placeNamed("left and right wing") == Place{Spot::Wing, std::nullopt});
}

TEST_CASE("The name of a zone, written as a part's zone, is that zone")
{
    for (std::size_t i = 0; i < Words<Zone>::list.size(); ++i) {
        const auto kind = Zone(i) == Zone::Foreplane ? AircraftKind::Canard : AircraftKind::Biplane;
        INFO(word(Zone(i)));
        CHECK(zonesAt(placeNamed(word(Zone(i))), kind) == ZoneSet{Zone(i)});
    }
}

} // namespace lastrivet::airframe
