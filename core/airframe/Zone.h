// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/WordSet.h"

namespace lastrivet::airframe {

/// The regions of an aeroplane that a drawing tells apart, from nose to tail, left before right.
enum class Zone {
    EngineBay,
    NoseWheel,
    Foreplane,
    Cockpit,
    FuselageTank,
    CentreFuselage,
    LeftWing,
    RightWing,
    LowerLeftWing,
    LowerRightWing,
    LeftTank,
    RightTank,
    LeftAileron,
    RightAileron,
    LeftFlap,
    RightFlap,
    LeftMainWheel,
    RightMainWheel,
    RearFuselage,
    Stabiliser,
    Elevator,
    Fin,
    Rudder,
    TailWheel,
};

using ZoneSet = WordSet<Zone>;

} // namespace lastrivet::airframe

namespace lastrivet {

/// The ids of the shapes in the drawings.
template <> struct Words<airframe::Zone> {
    static constexpr std::array<std::string_view, 24> list{"engine_bay",      "nose_wheel",
                                                           "foreplane",       "cockpit",
                                                           "fuselage_tank",   "centre_fuselage",
                                                           "left_wing",       "right_wing",
                                                           "lower_left_wing", "lower_right_wing",
                                                           "left_tank",       "right_tank",
                                                           "left_aileron",    "right_aileron",
                                                           "left_flap",       "right_flap",
                                                           "left_main_wheel", "right_main_wheel",
                                                           "rear_fuselage",   "stabiliser",
                                                           "elevator",        "fin",
                                                           "rudder",          "tail_wheel"};
};

} // namespace lastrivet
