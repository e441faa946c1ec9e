// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Weighing.h"

#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/Media.h"
#include "core/records/Tool.h"

namespace lastrivet {

template <> const RowDescription &describeRow<Weighing::ScaleReading>()
{
    static const std::array fields{
        field<&Weighing::ScaleReading::point>("point", true),
        field<&Weighing::ScaleReading::reading>("reading", true),
        field<&Weighing::ScaleReading::tare>("tare"),
        field<&Weighing::ScaleReading::arm>("arm", true),
        field<&Weighing::ScaleReading::tool_id>("tool_id"),
    };
    static const auto description =
        describeRows<Weighing::ScaleReading>("weighing.scale_readings", fields);
    return description;
}

template <> const RowDescription &describeRow<Weighing::Correction>()
{
    static const std::array fields{
        field<&Weighing::Correction::what>("what", true),
        field<&Weighing::Correction::weight>("weight", true),
        field<&Weighing::Correction::arm>("arm", true),
    };
    static const auto description =
        describeRows<Weighing::Correction>("weighing.corrections", fields);
    return description;
}

const RecordDescription &describeWeighing()
{
    static const std::array fields{
        idField<&Weighing::id>(),
        field<&Weighing::weighed_on>("weighed_on", true),
        field<&Weighing::place>("place"),
        field<&Weighing::weight_unit>("weight_unit", true),
        field<&Weighing::arm_unit>("arm_unit", true),
        field<&Weighing::datum>("datum"),
        field<&Weighing::level>("level"),
        field<&Weighing::fuel_state>("fuel_state"),
        field<&Weighing::oil_state>("oil_state"),
        listField<&Weighing::scale_readings>("scale_readings"),
        listField<&Weighing::corrections>("corrections"),
        field<&Weighing::equipment_note>("equipment_note"),
        field<&Weighing::report_id>("report_id"),
        field<&Weighing::note>("note"),
        field<&Weighing::withdrawn_on>("withdrawn_on"),
        field<&Weighing::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<Weighing>(fields);
    return description;
}

} // namespace lastrivet
