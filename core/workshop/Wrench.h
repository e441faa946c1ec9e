// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"

#include <string_view>

namespace lastrivet::workshop {

/// Where the sum is from: T_set = T x L / (L + E). In any units, as long as they are the same.
inline constexpr std::string_view wrenchSource =
    "AC 43.13-1B (9/8/98) fig. 7-2; TM 1-1500-204-23-9 para 8";

/// What to set the wrench to, so that `desired` reaches the nut through an extension.
///
/// `lever`: from the middle of the grip to the square drive. `extension`: from the drive to the
/// nut along the wrench; below zero when it points back to the handle, 0 at a right angle. Refuses
/// torques and levers that are not above zero, and an extension that ends at or behind the grip.
Result<double, Message> wrenchSetting(double desired, double lever, double extension);

/// The torque that reaches the nut at a setting; the same the other way round.
Result<double, Message> appliedTorque(double setting, double lever, double extension);

} // namespace lastrivet::workshop
