// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Vocabulary.h"

namespace lastrivet::fasteners {

/// A torque in another unit. One pound-force is 4.4482216152605 N and one inch 0.0254 m, both by
/// definition (NIST SP 811, appendix B).
double converted(double torque, TorqueUnit from, TorqueUnit to);

} // namespace lastrivet::fasteners
