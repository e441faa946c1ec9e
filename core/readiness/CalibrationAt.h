// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Tool.h"

namespace lastrivet::readiness {

/// The calibration that a tool had when it was used, among those whose day `counts`: the latest by
/// day; of one day, the later in the list. Null when it had none.
template <class Counts>
const Tool::Calibration *calibrationAt(const Tool &tool, Moment use, Counts &&counts)
{
    const Tool::Calibration *latest = nullptr;
    for (const auto &calibration : tool.calibrations) {
        if (!happened(calibration.calibrated_on, use) || !counts(calibration.calibrated_on))
            continue;
        if (!latest || calibration.calibrated_on->day() >= latest->calibrated_on->day())
            latest = &calibration;
    }
    return latest;
}

/// True when a tool that needs calibration was used without, or after it was due again.
template <class Counts> bool wasUncalibrated(const Tool &tool, Moment use, Counts &&counts)
{
    if (!tool.needs_calibration)
        return false;
    const auto *calibration = calibrationAt(tool, use, counts);
    return !calibration || after(use, *calibration->due_on);
}

} // namespace lastrivet::readiness
