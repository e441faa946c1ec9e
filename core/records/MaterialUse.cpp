// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/MaterialUse.h"

#include "core/records/Closing.h"
#include "core/records/Component.h"
#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/MaterialLot.h"
#include "core/records/Person.h"
#include "core/records/Step.h"

namespace lastrivet {

const RecordDescription &describeMaterialUse()
{
    static const std::array fields{
        idField<&MaterialUse::id>(),
        refsField<&MaterialUse::lot_ids>("lot_ids", true),
        field<&MaterialUse::component_id>("component_id", true),
        field<&MaterialUse::step_id>("step_id"),
        refsField<&MaterialUse::may_follow>("may_follow"),
        field<&MaterialUse::used_on>("used_on", true),
        field<&MaterialUse::approximate>("approximate"),
        field<&MaterialUse::mix_ratio>("mix_ratio"),
        field<&MaterialUse::temperature_min>("temperature_min"),
        field<&MaterialUse::temperature_max>("temperature_max"),
        field<&MaterialUse::temperature_unit>("temperature_unit"),
        field<&MaterialUse::humidity>("humidity"),
        field<&MaterialUse::cure_minutes>("cure_minutes"),
        field<&MaterialUse::sample>("sample"),
        field<&MaterialUse::sample_on>("sample_on"),
        field<&MaterialUse::accepted_on>("accepted_on"),
        field<&MaterialUse::accepted_by>("accepted_by"),
        field<&MaterialUse::accepted_basis>("accepted_basis"),
        field<&MaterialUse::note>("note"),
        field<&MaterialUse::withdrawn_on>("withdrawn_on"),
        field<&MaterialUse::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<MaterialUse>(fields);
    return description;
}

} // namespace lastrivet
