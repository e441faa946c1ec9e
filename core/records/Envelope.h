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

/// The limits of weight and centre of gravity.
struct Envelope {
    static constexpr RecordType type = RecordType::Envelope;

    /// A corner of the envelope.
    struct Point {
        double weight = 0;
        double arm = 0;

        friend bool operator==(const Point &, const Point &) = default;
    };

    Id<Envelope> id;
    std::vector<Point> points;
    WeightUnit weight_unit = WeightUnit::Kilograms;
    ArmUnit arm_unit = ArmUnit::Millimetres;
    /// Where the mean aerodynamic chord begins, in `arm_unit` from the datum.
    std::optional<double> lemac;
    /// The length of the mean aerodynamic chord, in `arm_unit`.
    std::optional<double> mac;
    /// Where the limits come from.
    std::string source;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Envelope &, const Envelope &) = default;
};

} // namespace lastrivet
