// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <optional>
#include <utility>
#include <vector>

namespace lastrivet::fasteners {

/// How far the fasteners of one place have come.
enum class FastenerState {
    ToFit,
    FingerTight, ///< fitted, a torque limit is set, and they were not torqued
    OutOfLimits, ///< torqued, less the drag, outside of the limits, and nobody has accepted it
    ToLock,      ///< somebody has to lock them by hand
    ToSeal,      ///< torqued, and no torque seal yet
    Done,
    Removed,
};

FastenerState stateOf(const Fastener &fastener, Moment asOf);

/// True when a torque that the wrench shows, less the drag, is outside of the limits.
bool isOutside(const Fastener &fastener, double shown);

/// The torque that the wrench is to show, least and most: the limits with the drag added.
std::pair<std::optional<double>, std::optional<double>> limitsOnWrench(const Fastener &fastener);

/// The live fasteners that are finger-tight, those longest fitted first.
std::vector<const Fastener *> fingerTight(const Records &records, Moment asOf);

} // namespace lastrivet::fasteners
