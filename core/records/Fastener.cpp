// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Fastener.h"

#include "core/records/Closing.h"
#include "core/records/Component.h"
#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/Person.h"
#include "core/records/Step.h"
#include "core/records/Tool.h"

namespace lastrivet {

const RecordDescription &describeFastener()
{
    static const std::array fields{
        idField<&Fastener::id>(),
        field<&Fastener::component_id>("component_id", true),
        field<&Fastener::step_id>("step_id"),
        refsField<&Fastener::may_follow>("may_follow"),
        field<&Fastener::place>("place", true),
        field<&Fastener::hardware>("hardware"),
        field<&Fastener::thread>("thread"),
        field<&Fastener::quantity>("quantity"),
        field<&Fastener::planned_on>("planned_on"),
        field<&Fastener::torque_min>("torque_min"),
        field<&Fastener::torque_max>("torque_max"),
        field<&Fastener::torque_drag>("torque_drag"),
        field<&Fastener::torque_unit>("torque_unit"),
        field<&Fastener::fitted_on>("fitted_on"),
        field<&Fastener::torqued_on>("torqued_on"),
        field<&Fastener::torque_value>("torque_value"),
        field<&Fastener::tool_id>("tool_id"),
        field<&Fastener::marked_on>("marked_on"),
        field<&Fastener::locking>("locking"),
        field<&Fastener::locked_on>("locked_on"),
        field<&Fastener::removed_on>("removed_on"),
        field<&Fastener::removed_why>("removed_why"),
        field<&Fastener::accepted_on>("accepted_on"),
        field<&Fastener::accepted_by>("accepted_by"),
        field<&Fastener::accepted_basis>("accepted_basis"),
        field<&Fastener::note>("note"),
        field<&Fastener::withdrawn_on>("withdrawn_on"),
        field<&Fastener::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<Fastener>(fields);
    return description;
}

} // namespace lastrivet
