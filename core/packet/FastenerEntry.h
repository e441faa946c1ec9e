// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Region.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// A line of fasteners of one place; torques in `unit`, as entered.
struct FastenerEntry {
    Id<Fastener> id;
    std::string part;
    std::string place;
    std::string hardware;
    std::int64_t quantity = 1;
    std::optional<double> torque_min;
    std::optional<double> torque_max;
    std::optional<double> torque_drag;
    std::optional<double> torque_value;
    TorqueUnit unit = TorqueUnit::InchPounds;
    std::optional<Moment> fitted_on;
    std::optional<Moment> torqued_on;
    std::string tool;
    /// True when the tool needs calibration and was in none on the day of torquing.
    bool was_tool_uncalibrated = false;
    std::optional<Moment> marked_on;
    Locking locking = Locking::None;
    bool is_locked_by_hand = false;
    std::optional<Moment> locked_on;
    std::optional<Moment> accepted_on;
    std::string accepted_by;
    std::string accepted_basis;

    /// Torque as it counts: what the wrench showed, less the drag of a self-locking nut.
    std::optional<double> netTorque() const;
    bool isOutOfLimits() const;
};

/// One line of fasteners as it stood at the moment of the region's answer.
FastenerEntry fastenerEntry(const Region &region, const Fastener &fastener);
/// Fasteners of the region that are planned or fitted and not removed, by part.
std::vector<FastenerEntry> fasteners(const Region &region);

} // namespace lastrivet::packet
