// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Component.h"

#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"

namespace lastrivet {

const RecordDescription &describeComponent()
{
    static const std::array fields{
        idField<&Component::id>(),
        field<&Component::parent_id>("parent_id"),
        field<&Component::position>("position"),
        field<&Component::code>("code"),
        field<&Component::name>("name", true),
        field<&Component::kind>("kind"),
        field<&Component::construction>("construction"),
        field<&Component::part_number>("part_number"),
        field<&Component::serial_number>("serial_number"),
        field<&Component::zone>("zone"),
        field<&Component::plan_ref>("plan_ref"),
        field<&Component::place>("place"),
        field<&Component::shelf>("shelf"),
        field<&Component::never_enclosed_why>("never_enclosed_why"),
        field<&Component::note>("note"),
        field<&Component::withdrawn_on>("withdrawn_on"),
        field<&Component::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<Component>(fields);
    return description;
}

} // namespace lastrivet
