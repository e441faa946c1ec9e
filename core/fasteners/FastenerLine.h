// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/DecimalSign.h"
#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/records/Fastener.h"
#include "core/workshop/OwnLimits.h"

#include <string_view>
#include <vector>

namespace lastrivet::fasteners {

/// Equal fasteners of one place in one line: how many, the place, then, parted by commas and in any
/// order, what they are: `12 x rear spar hinge, AN4-7A, 1/4-28 shear, drag 6, split pin`.
///
/// A thread of the torque table brings its limits for a nut in tension, or in shear where that word
/// stands with it; limits of the drawing are written `50-70 in-lb` and come before those. What is
/// none of these is the hardware. Says in one sentence what is wrong. The limits that are the
/// project's own (`own`) come before the table's; `sign` is the person's decimal sign.
Result<Fastener, Message> readFastenerLine(std::string_view line,
                                           const std::vector<workshop::OwnLimit> &own = {},
                                           DecimalSign sign = DecimalSign::Unknown);

} // namespace lastrivet::fasteners
