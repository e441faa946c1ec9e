// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Region.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// A tool that torqued or measured something in the region, with its calibrations.
struct ToolEntry {
    struct Calibration {
        std::optional<Moment> calibrated_on;
        std::optional<Moment> due_on;
        bool has_certificate = false;
    };

    Id<Tool> id;
    std::string name;
    std::string serial_number;
    bool needs_calibration = false;
    std::optional<Moment> first_used;
    std::optional<Moment> last_used;
    std::vector<Calibration> calibrations;
    int uses = 0;
    /// Without the calibration that it needs, or after that was due again.
    int uncalibrated_uses = 0;
};

/// True when the tool needs calibration and was in none when it was used; false of no tool.
bool wasUncalibrated(const Region &region, Id<Tool> tool, Moment use);

/// The tools used in the region, by name.
std::vector<ToolEntry> tools(const Region &region);

} // namespace lastrivet::packet
