// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Aircraft.h"

#include <QString>

namespace lastrivet::print {

class Pages;

/// "C-GLRV, Larkspur 2": what people call the aircraft.
QString aircraftName(const packet::Aircraft &aircraft);

/// Where people live is for those who work with them.
enum class PrivateMatter { Printed, LeftOut };

/// Type, registration, numbers and builder.
void drawAircraft(Pages &pages, const packet::Aircraft &aircraft, PrivateMatter privateMatter);

} // namespace lastrivet::print
