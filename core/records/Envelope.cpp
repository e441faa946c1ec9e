// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Envelope.h"

#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"

namespace lastrivet {

template <> const RowDescription &describeRow<Envelope::Point>()
{
    static const std::array fields{
        field<&Envelope::Point::weight>("weight", true),
        field<&Envelope::Point::arm>("arm", true),
    };
    static const auto description = describeRows<Envelope::Point>("envelope.points", fields);
    return description;
}

const RecordDescription &describeEnvelope()
{
    static const std::array fields{
        idField<&Envelope::id>(),
        listField<&Envelope::points>("points"),
        field<&Envelope::weight_unit>("weight_unit", true),
        field<&Envelope::arm_unit>("arm_unit", true),
        field<&Envelope::lemac>("lemac"),
        field<&Envelope::mac>("mac"),
        field<&Envelope::source>("source"),
        field<&Envelope::note>("note"),
        field<&Envelope::withdrawn_on>("withdrawn_on"),
        field<&Envelope::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<Envelope>(fields);
    return description;
}

} // namespace lastrivet
