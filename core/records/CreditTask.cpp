// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/CreditTask.h"

#include "core/records/Component.h"
#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/Media.h"

namespace lastrivet {

const RecordDescription &describeCreditTask()
{
    static const std::array fields{
        idField<&CreditTask::id>(),
        field<&CreditTask::section>("section"),
        field<&CreditTask::task>("task", true),
        field<&CreditTask::not_applicable>("not_applicable"),
        field<&CreditTask::added>("added"),
        field<&CreditTask::kit_tenths>("kit_tenths"),
        field<&CreditTask::commercial_tenths>("commercial_tenths"),
        field<&CreditTask::assembly_tenths>("assembly_tenths"),
        field<&CreditTask::fabrication_tenths>("fabrication_tenths"),
        refsField<&CreditTask::component_ids>("component_ids"),
        refsField<&CreditTask::media_ids>("media_ids"),
        field<&CreditTask::note>("note"),
        field<&CreditTask::withdrawn_on>("withdrawn_on"),
        field<&CreditTask::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<CreditTask>(fields);
    return description;
}

} // namespace lastrivet
