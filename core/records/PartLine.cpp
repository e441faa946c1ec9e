// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/PartLine.h"

#include "core/records/Closing.h"
#include "core/records/Component.h"
#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/Step.h"

namespace lastrivet {

const RecordDescription &describePartLine()
{
    static const std::array fields{
        idField<&PartLine::id>(),
        field<&PartLine::component_id>("component_id"),
        field<&PartLine::step_id>("step_id"),
        refsField<&PartLine::may_follow>("may_follow"),
        field<&PartLine::planned_on>("planned_on"),
        field<&PartLine::shipment>("shipment"),
        field<&PartLine::part_number>("part_number"),
        field<&PartLine::name>("name", true),
        field<&PartLine::quantity>("quantity", true),
        field<&PartLine::received_quantity>("received_quantity"),
        field<&PartLine::received_on>("received_on"),
        field<&PartLine::damaged_quantity>("damaged_quantity"),
        field<&PartLine::ordered_on>("ordered_on"),
        field<&PartLine::expected_on>("expected_on"),
        field<&PartLine::unit_price>("unit_price"),
        field<&PartLine::currency>("currency"),
        field<&PartLine::note>("note"),
        field<&PartLine::withdrawn_on>("withdrawn_on"),
        field<&PartLine::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<PartLine>(fields);
    return description;
}

} // namespace lastrivet
