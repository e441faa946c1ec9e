// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/InchAndPound.h"
#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/records/Vocabulary.h"

#include <string_view>

namespace lastrivet::workshop {

/// What a number of the workshop measures.
enum class Quantity { Number, Length, Run, Torque, Force };

/// Exact by definition: standard gravity is 9.80665 m/s² (3rd CGPM, 1901).
inline constexpr double newtonsOfPound = kilogramsOfPound * 9.80665;
inline constexpr double newtonMetresOfInchPound = 0.0254 * newtonsOfPound;

/// A length in inches, a run of wire in feet, a torque in inch-pounds or a force in pounds, as the
/// tables have them, from what a person wrote: "1/8", "3.2 mm", "5 N·m", "2 ft-lb". Without a unit
/// it is one of `units`. A comma stands for a point, and is refused where it could be a thousand
/// ("1,850"). Refuses what is no number and units of something else.
Result<double, Message> inTableUnits(std::string_view text, Quantity quantity, UnitSystem units);

/// The other way: what the tables have, in `units`.
double inUnits(double value, Quantity quantity, UnitSystem units);

/// "in", "mm", "in-lb", "N·m" …; empty for a plain number.
std::string_view unitSign(Quantity quantity, UnitSystem units);

} // namespace lastrivet::workshop
