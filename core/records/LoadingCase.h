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

/// A loading to check against the envelope.
struct LoadingCase {
    static constexpr RecordType type = RecordType::LoadingCase;

    /// A weight at an arm.
    struct Item {
        std::string what;
        double weight = 0;
        double arm = 0;

        friend bool operator==(const Item &, const Item &) = default;
    };

    Id<LoadingCase> id;
    std::string name;
    std::vector<Item> items;
    WeightUnit weight_unit = WeightUnit::Kilograms;
    ArmUnit arm_unit = ArmUnit::Millimetres;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const LoadingCase &, const LoadingCase &) = default;
};

} // namespace lastrivet
