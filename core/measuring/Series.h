// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <vector>

namespace lastrivet::measuring {

/// Where a measurement stands.
enum class MeasurementState {
    ToMeasure,
    Inside,
    Outside,
    Accepted, ///< outside, and somebody has accepted it on a basis
    Repeated, ///< outside, and measured again since
};

MeasurementState stateOf(const Measurement &measurement, const Records &records, Moment asOf);

/// The live measurements of the same thing on the same part that were made by a day, the oldest
/// first: what is measured again is told by its words.
std::vector<const Measurement *> seriesOf(const Measurement &measurement, const Records &records,
                                          Moment asOf);

} // namespace lastrivet::measuring
