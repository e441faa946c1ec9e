// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/HoldPoint.h"

#include "core/records/Closing.h"
#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/Person.h"

namespace lastrivet {

const RecordDescription &describeHoldPoint()
{
    static const std::array fields{
        idField<&HoldPoint::id>(),
        field<&HoldPoint::closing_id>("closing_id", true),
        field<&HoldPoint::kind>("kind", true),
        field<&HoldPoint::signer_role>("signer_role", true),
        field<&HoldPoint::required>("required"),
        field<&HoldPoint::source>("source"),
        field<&HoldPoint::planned_on>("planned_on"),
        field<&HoldPoint::waived_on>("waived_on"),
        field<&HoldPoint::waived_by>("waived_by"),
        field<&HoldPoint::waived_why>("waived_why"),
        field<&HoldPoint::note>("note"),
        field<&HoldPoint::withdrawn_on>("withdrawn_on"),
        field<&HoldPoint::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<HoldPoint>(fields);
    return description;
}

} // namespace lastrivet
