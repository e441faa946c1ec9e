// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Squawk.h"

#include "core/records/Closing.h"
#include "core/records/Component.h"
#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/Inspection.h"
#include "core/records/Person.h"

namespace lastrivet {

template <> const RowDescription &describeRow<Squawk::RepairOption>()
{
    static const std::array fields{
        field<&Squawk::RepairOption::title>("title", true),
        field<&Squawk::RepairOption::pros>("pros"),
        field<&Squawk::RepairOption::cons>("cons"),
        field<&Squawk::RepairOption::chosen>("chosen"),
    };
    static const auto description =
        describeRows<Squawk::RepairOption>("squawk.repair_options", fields);
    return description;
}

const RecordDescription &describeSquawk()
{
    static const std::array fields{
        idField<&Squawk::id>(),
        field<&Squawk::number>("number", true),
        field<&Squawk::component_id>("component_id"),
        field<&Squawk::title>("title", true),
        field<&Squawk::detail>("detail"),
        field<&Squawk::severity>("severity"),
        field<&Squawk::found_on>("found_on", true),
        field<&Squawk::approximate>("approximate"),
        field<&Squawk::found_by>("found_by"),
        field<&Squawk::inspection_id>("inspection_id"),
        field<&Squawk::finding_number>("finding_number"),
        field<&Squawk::verify_by>("verify_by"),
        refsField<&Squawk::needs_access_to>("needs_access_to"),
        refsField<&Squawk::not_inside>("not_inside"),
        field<&Squawk::estimate_minutes>("estimate_minutes"),
        field<&Squawk::repair_plan>("repair_plan"),
        listField<&Squawk::repair_options>("repair_options"),
        field<&Squawk::correction>("correction"),
        field<&Squawk::fixed_on>("fixed_on"),
        field<&Squawk::fixed_by>("fixed_by"),
        field<&Squawk::verified_on>("verified_on"),
        field<&Squawk::verified_by>("verified_by"),
        field<&Squawk::accepted_on>("accepted_on"),
        field<&Squawk::accepted_by>("accepted_by"),
        field<&Squawk::accepted_basis>("accepted_basis"),
        field<&Squawk::source>("source"),
        field<&Squawk::note>("note"),
        field<&Squawk::withdrawn_on>("withdrawn_on"),
        field<&Squawk::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<Squawk>(fields);
    return description;
}

} // namespace lastrivet
