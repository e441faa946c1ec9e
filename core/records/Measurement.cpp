// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Measurement.h"

#include "core/records/Closing.h"
#include "core/records/Component.h"
#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/Person.h"
#include "core/records/Step.h"
#include "core/records/Tool.h"

namespace lastrivet {

const RecordDescription &describeMeasurement()
{
    static const std::array fields{
        idField<&Measurement::id>(),
        field<&Measurement::component_id>("component_id", true),
        field<&Measurement::step_id>("step_id"),
        refsField<&Measurement::may_follow>("may_follow"),
        field<&Measurement::what>("what", true),
        field<&Measurement::unit>("unit"),
        field<&Measurement::planned_on>("planned_on"),
        field<&Measurement::minimum>("minimum"),
        field<&Measurement::maximum>("maximum"),
        field<&Measurement::value>("value"),
        field<&Measurement::measured_on>("measured_on"),
        field<&Measurement::tool_id>("tool_id"),
        field<&Measurement::accepted_on>("accepted_on"),
        field<&Measurement::accepted_by>("accepted_by"),
        field<&Measurement::accepted_basis>("accepted_basis"),
        field<&Measurement::note>("note"),
        field<&Measurement::withdrawn_on>("withdrawn_on"),
        field<&Measurement::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<Measurement>(fields);
    return description;
}

} // namespace lastrivet
