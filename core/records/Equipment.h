// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Moment.h"
#include "core/records/RecordType.h"
#include "core/records/Vocabulary.h"

#include <optional>
#include <string>

namespace lastrivet {

struct Component;

/// An item of the equipment list.
struct Equipment {
    static constexpr RecordType type = RecordType::Equipment;

    Id<Equipment> id;
    /// The part that it is, where it is one of the tree.
    Id<Component> component_id;
    std::string name;
    std::string maker;
    std::string part_number;
    std::string serial_number;
    /// In `weight_unit`.
    std::optional<double> weight;
    std::optional<WeightUnit> weight_unit;
    /// In `arm_unit` from the datum.
    std::optional<double> arm;
    std::optional<ArmUnit> arm_unit;
    std::optional<Moment> fitted_on;
    std::optional<Moment> removed_on;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Equipment &, const Equipment &) = default;
};

} // namespace lastrivet
