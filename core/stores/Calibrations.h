// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <vector>

namespace lastrivet::stores {

enum class ToolState {
    NeedsNone,       ///< not to be calibrated
    NeverCalibrated, ///< to be calibrated, and nothing on record
    InCalibration,
    DueSoon, ///< within `soonDays`
    Overdue,
};

/// How a tool stands on a day.
struct ToolStanding {
    ToolState state = ToolState::NeedsNone;
    /// The place in the tool's list of the calibration that counts; none when there is none.
    std::optional<std::size_t> calibration;
    /// Until it is due again; below zero after it. None without a calibration.
    std::optional<std::int64_t> days_left;
    bool has_certificate = false;
    /// Torques, measurements and weighings on record with it.
    std::int64_t uses = 0;
    /// Of those: made while it was not in calibration.
    std::vector<RecordRef> outside;
};

ToolStanding standingOf(const Tool &tool, const Records &records, Moment asOf);

} // namespace lastrivet::stores
