// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/SignOff.h"

#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/HoldPoint.h"
#include "core/records/Inspection.h"
#include "core/records/Media.h"
#include "core/records/Person.h"

namespace lastrivet {

const RecordDescription &describeSignOff()
{
    static const std::array fields{
        idField<&SignOff::id>(),
        field<&SignOff::hold_point_id>("hold_point_id"),
        field<&SignOff::inspection_id>("inspection_id"),
        field<&SignOff::person_id>("person_id", true),
        field<&SignOff::credential>("credential"),
        field<&SignOff::signed_on>("signed_on", true),
        field<&SignOff::result>("result", true),
        field<&SignOff::seen>("seen"),
        field<&SignOff::remarks>("remarks"),
        field<&SignOff::scan_id>("scan_id"),
        field<&SignOff::note>("note"),
        field<&SignOff::withdrawn_on>("withdrawn_on"),
        field<&SignOff::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<SignOff>(fields);
    return description;
}

} // namespace lastrivet
