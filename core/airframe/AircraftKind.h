// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Words.h"

namespace lastrivet::airframe {

/// The outlines that an aeroplane can be drawn with.
enum class AircraftKind { HighWing, LowWing, Biplane, Canard };

} // namespace lastrivet::airframe

namespace lastrivet {

/// The names of the drawings, and of a builder's own choice among them.
template <> struct Words<airframe::AircraftKind> {
    static constexpr std::array<std::string_view, 4> list{"high_wing", "low_wing", "biplane",
                                                          "canard"};
};

} // namespace lastrivet
