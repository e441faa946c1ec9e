// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Vocabulary.h"

#include <optional>
#include <string_view>

namespace lastrivet::workshop {

/// The unit of torque that words name, whatever stands between its letters: "in-lb", "lbs in",
/// "N.m". Nothing for every other.
std::optional<TorqueUnit> torqueUnitSaid(std::string_view words);

/// True for units of torque that nothing here is kept in: "daN·m", "Ncm", "kgm".
bool isForeignTorqueUnit(std::string_view words);

/// How many inch-pounds one of a unit is.
double inchPoundsIn(TorqueUnit unit);

} // namespace lastrivet::workshop
