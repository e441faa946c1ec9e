// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Tool.h"

#include <optional>

namespace lastrivet::readiness {

/// The newest calibration of a tool among those whose day `counts`: the latest by day; of one day,
/// the later in the list, which an import need not have in order. Null when there is none.
template <class Counts>
const Tool::Calibration *newestCalibration(const Tool &tool, Counts &&counts)
{
    const Tool::Calibration *newest = nullptr;
    for (const auto &calibration : tool.calibrations) {
        if (!calibration.calibrated_on || !counts(calibration.calibrated_on))
            continue;
        if (!newest || calibration.calibrated_on->day() >= newest->calibrated_on->day())
            newest = &calibration;
    }
    return newest;
}

/// The newest of all. What it says is when the tool is due; an older one may say a later day.
inline const Tool::Calibration *newestCalibration(const Tool &tool)
{
    return newestCalibration(tool, [](const std::optional<Moment> &) { return true; });
}

/// The calibration that a tool had when it was used, among those whose day `counts`: the newest by
/// then. Null when it had none.
template <class Counts>
const Tool::Calibration *calibrationAt(const Tool &tool, Moment use, Counts &&counts)
{
    return newestCalibration(tool, [&](const std::optional<Moment> &moment) {
        return happened(moment, use) && counts(moment);
    });
}

/// True when a tool that needs calibration was used without, or after it was due again.
template <class Counts> bool wasUncalibrated(const Tool &tool, Moment use, Counts &&counts)
{
    if (!tool.needs_calibration)
        return false;
    const auto *calibration = calibrationAt(tool, use, counts);
    return !calibration || after(use, *calibration->due_on);
}

/// The same with all calibrations on record.
inline bool wasUncalibrated(const Tool &tool, Moment use)
{
    return wasUncalibrated(tool, use, [](const std::optional<Moment> &) { return true; });
}

} // namespace lastrivet::readiness
