// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Equipment.h"

#include "core/records/Component.h"
#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"

namespace lastrivet {

const RecordDescription &describeEquipment()
{
    static const std::array fields{
        idField<&Equipment::id>(),
        field<&Equipment::component_id>("component_id"),
        field<&Equipment::name>("name", true),
        field<&Equipment::maker>("maker"),
        field<&Equipment::part_number>("part_number"),
        field<&Equipment::serial_number>("serial_number"),
        field<&Equipment::weight>("weight"),
        field<&Equipment::weight_unit>("weight_unit"),
        field<&Equipment::arm>("arm"),
        field<&Equipment::arm_unit>("arm_unit"),
        field<&Equipment::fitted_on>("fitted_on"),
        field<&Equipment::removed_on>("removed_on"),
        field<&Equipment::note>("note"),
        field<&Equipment::withdrawn_on>("withdrawn_on"),
        field<&Equipment::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<Equipment>(fields);
    return description;
}

} // namespace lastrivet
