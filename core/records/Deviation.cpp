// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Deviation.h"

#include "core/records/Closing.h"
#include "core/records/Component.h"
#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/Media.h"
#include "core/records/Person.h"

namespace lastrivet {

const RecordDescription &describeDeviation()
{
    static const std::array fields{
        idField<&Deviation::id>(),
        field<&Deviation::number>("number", true),
        refsField<&Deviation::component_ids>("component_ids"),
        refsField<&Deviation::not_inside>("not_inside"),
        field<&Deviation::title>("title", true),
        field<&Deviation::drawing_ref>("drawing_ref"),
        field<&Deviation::built_as>("built_as"),
        field<&Deviation::reason>("reason"),
        field<&Deviation::alternatives>("alternatives"),
        field<&Deviation::raised_on>("raised_on", true),
        field<&Deviation::asked_on>("asked_on"),
        field<&Deviation::asked_of>("asked_of"),
        field<&Deviation::decided_on>("decided_on"),
        field<&Deviation::decided_by>("decided_by"),
        field<&Deviation::decision>("decision"),
        field<&Deviation::basis>("basis"),
        field<&Deviation::built_on>("built_on"),
        field<&Deviation::undone_on>("undone_on"),
        field<&Deviation::weight_change>("weight_change"),
        field<&Deviation::weight_unit>("weight_unit"),
        field<&Deviation::arm>("arm"),
        field<&Deviation::arm_unit>("arm_unit"),
        refsField<&Deviation::media_ids>("media_ids"),
        field<&Deviation::note>("note"),
        field<&Deviation::withdrawn_on>("withdrawn_on"),
        field<&Deviation::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<Deviation>(fields);
    return description;
}

} // namespace lastrivet
