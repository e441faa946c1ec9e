// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/LoadingCase.h"

#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"

namespace lastrivet {

template <> const RowDescription &describeRow<LoadingCase::Item>()
{
    static const std::array fields{
        field<&LoadingCase::Item::what>("what", true),
        field<&LoadingCase::Item::weight>("weight", true),
        field<&LoadingCase::Item::arm>("arm", true),
    };
    static const auto description = describeRows<LoadingCase::Item>("loading_case.items", fields);
    return description;
}

const RecordDescription &describeLoadingCase()
{
    static const std::array fields{
        idField<&LoadingCase::id>(),
        field<&LoadingCase::name>("name", true),
        listField<&LoadingCase::items>("items"),
        field<&LoadingCase::weight_unit>("weight_unit", true),
        field<&LoadingCase::arm_unit>("arm_unit", true),
        field<&LoadingCase::note>("note"),
        field<&LoadingCase::withdrawn_on>("withdrawn_on"),
        field<&LoadingCase::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<LoadingCase>(fields);
    return description;
}

} // namespace lastrivet
