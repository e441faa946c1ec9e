// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

namespace lastrivet::airframe {

/// What words name of an aeroplane, from a whole region to one surface of it.
enum class Spot {
    Wing,
    UpperWing,
    LowerWing,
    WingTank,
    Aileron,
    Flap,
    /// One of which nobody says where it is.
    Tank,
    FuselageTank,
    Tail,
    Stabiliser,
    Elevator,
    Fin,
    Rudder,
    Foreplane,
    Fuselage,
    EngineBay,
    Cockpit,
    CentreFuselage,
    RearFuselage,
    Gear,
    MainWheel,
    NoseWheel,
    TailWheel,
};

enum class Side { Left, Right };

/// As much as words say about where something is.
struct Place {
    std::optional<Spot> spot;
    std::optional<Side> side;

    friend bool operator==(const Place &, const Place &) = default;
};

/// What a text says in English, German or French: "linker Flügel", "rear fuselage, top".
Place placeNamed(std::string_view text);

/// True when the one is a part of the other, as a flap is of a wing.
bool liesIn(Spot inner, Spot outer);

} // namespace lastrivet::airframe
