// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Moment.h"
#include "core/records/RecordType.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet {

struct Media;

/// A tool, with its calibrations.
struct Tool {
    static constexpr RecordType type = RecordType::Tool;

    /// Calibrated on one day, due again on another.
    struct Calibration {
        std::optional<Moment> calibrated_on;
        std::optional<Moment> due_on;
        Id<Media> certificate_id;

        friend bool operator==(const Calibration &, const Calibration &) = default;
    };

    Id<Tool> id;
    std::string name;
    std::string serial_number;
    bool needs_calibration = false;
    std::vector<Calibration> calibrations;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Tool &, const Tool &) = default;
};

} // namespace lastrivet
