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
    Id<Component> component_id;
    std::string name;
    std::string maker;
    std::string part_number;
    std::string serial_number;
    std::optional<double> weight;
    std::optional<WeightUnit> weight_unit;
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
