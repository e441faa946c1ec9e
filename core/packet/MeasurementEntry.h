// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Region.h"
#include "core/readiness/Limits.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// A measured value and its limits, in `unit`, as entered.
struct MeasurementEntry {
    Id<Measurement> id;
    std::string part;
    std::string what;
    std::string unit;
    std::optional<double> minimum;
    std::optional<double> maximum;
    std::optional<double> value;
    std::optional<Moment> measured_on;
    std::string tool;
    bool was_tool_uncalibrated = false;
    std::optional<Moment> accepted_on;
    std::string accepted_by;
    std::string accepted_basis;

    bool isOutOfLimits() const { return value && readiness::isOutside(*value, minimum, maximum); }
};

/// Measurements of the region that are planned or taken, by part, then by date.
std::vector<MeasurementEntry> measurements(const Region &region);

} // namespace lastrivet::packet
