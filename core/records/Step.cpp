// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Step.h"

#include "core/records/Closing.h"
#include "core/records/Component.h"
#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"

namespace lastrivet {

const RecordDescription &describeStep()
{
    static const std::array fields{
        idField<&Step::id>(),
        field<&Step::component_id>("component_id", true),
        field<&Step::position>("position"),
        field<&Step::title>("title", true),
        field<&Step::plan_ref>("plan_ref"),
        field<&Step::planned_on>("planned_on"),
        field<&Step::estimate_minutes>("estimate_minutes"),
        refsField<&Step::after>("after"),
        field<&Step::closes>("closes"),
        refsField<&Step::may_follow>("may_follow"),
        field<&Step::done_on>("done_on"),
        field<&Step::dropped_on>("dropped_on"),
        field<&Step::note>("note"),
        field<&Step::withdrawn_on>("withdrawn_on"),
        field<&Step::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<Step>(fields);
    return description;
}

} // namespace lastrivet
