// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Inspection.h"

#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/HoldPoint.h"
#include "core/records/Media.h"
#include "core/records/Person.h"

namespace lastrivet {

const RecordDescription &describeInspection()
{
    static const std::array fields{
        idField<&Inspection::id>(),
        field<&Inspection::kind>("kind", true),
        field<&Inspection::reference>("reference"),
        field<&Inspection::asked_on>("asked_on"),
        field<&Inspection::planned_for>("planned_for"),
        field<&Inspection::held_on>("held_on"),
        field<&Inspection::completed_on>("completed_on"),
        field<&Inspection::cancelled_on>("cancelled_on"),
        field<&Inspection::inspector_id>("inspector_id"),
        refsField<&Inspection::present>("present"),
        field<&Inspection::place>("place"),
        field<&Inspection::report_number>("report_number"),
        refsField<&Inspection::hold_point_ids>("hold_point_ids"),
        refsField<&Inspection::media_ids>("media_ids"),
        field<&Inspection::note>("note"),
        field<&Inspection::withdrawn_on>("withdrawn_on"),
        field<&Inspection::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<Inspection>(fields);
    return description;
}

} // namespace lastrivet
