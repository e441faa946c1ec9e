// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Moment.h"
#include "core/records/RecordType.h"
#include "core/records/Vocabulary.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet {

struct Media;
struct Tool;

/// A weighing of the aeroplane.
struct Weighing {
    static constexpr RecordType type = RecordType::Weighing;

    /// What a scale under one point showed.
    struct ScaleReading {
        std::string point;
        double reading = 0;
        /// What lies on the scale besides the aeroplane; taken off.
        double tare = 0;
        double arm = 0;
        Id<Tool> tool_id;

        friend bool operator==(const ScaleReading &, const ScaleReading &) = default;
    };

    /// A weight to take off or add.
    struct Correction {
        std::string what;
        double weight = 0;
        double arm = 0;

        friend bool operator==(const Correction &, const Correction &) = default;
    };

    Id<Weighing> id;
    std::optional<Moment> weighed_on;
    std::string place;
    WeightUnit weight_unit = WeightUnit::Kilograms;
    ArmUnit arm_unit = ArmUnit::Millimetres;
    /// Where arms are measured from.
    std::string datum;
    /// How the aeroplane was levelled.
    std::string level;
    std::string fuel_state;
    std::string oil_state;
    /// Weights in `weight_unit`, arms in `arm_unit` from the datum.
    std::vector<ScaleReading> scale_readings;
    std::vector<Correction> corrections;
    /// The equipment on board, in words.
    std::string equipment_note;
    Id<Media> report_id;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Weighing &, const Weighing &) = default;
};

} // namespace lastrivet
