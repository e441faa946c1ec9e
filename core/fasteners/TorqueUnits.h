// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/records/Vocabulary.h"

#include <string_view>

namespace lastrivet::fasteners {

/// A torque in another unit. One pound-force is 4.4482216152605 N and one inch 0.0254 m, both by
/// definition (NIST SP 811, appendix B).
double converted(double torque, TorqueUnit from, TorqueUnit to);

/// A torque in `unit`, from what a person wrote: a number is in that unit, "5 ft-lb" comes from
/// another. Refuses in one sentence what is no torque, and one that is not above zero.
Result<double, Message> readTorque(std::string_view text, TorqueUnit unit);

} // namespace lastrivet::fasteners
