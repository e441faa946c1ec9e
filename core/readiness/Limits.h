// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cmath>
#include <optional>

namespace lastrivet::readiness {

/// Torque as it counts: what the wrench showed, less the drag of a self-locking nut.
inline std::optional<double> netTorque(std::optional<double> shown, std::optional<double> drag)
{
    return shown ? std::optional(*shown - drag.value_or(0)) : std::nullopt;
}

/// True when the value is below the minimum or above the maximum, where they are set.
///
/// Values are typed as decimals: 55.3 less a drag of 5.3 has to be within 50 to 70, although the
/// binary difference is a little below 50. Hence a tolerance far below what any tool can show.
inline bool isOutside(double value, std::optional<double> minimum, std::optional<double> maximum)
{
    const double slack = 1e-9 * std::max(1.0, std::abs(value));
    return (minimum && value < *minimum - slack) || (maximum && value > *maximum + slack);
}

/// True when there is a torque that, less the drag, is outside the limits: of a fastener, or of a
/// fastener as a document shows it.
template <class Torqued> bool isTorqueOutside(const Torqued &fastener)
{
    const auto torque = netTorque(fastener.torque_value, fastener.torque_drag);
    return torque && isOutside(*torque, fastener.torque_min, fastener.torque_max);
}

} // namespace lastrivet::readiness
