// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Aircraft.h"

#include <QString>

namespace lastrivet::print {

class Pages;

/// "C-GLRV  Larkspur 2": what people call the aircraft.
QString aircraftName(const packet::Aircraft &aircraft);

/// Type, registration, numbers and builder.
void drawAircraft(Pages &pages, const packet::Aircraft &aircraft);

} // namespace lastrivet::print
