// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Closing.h"

#include "core/records/Component.h"
#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/Person.h"
#include "core/records/SignOff.h"

namespace lastrivet {

template <> const RowDescription &describeRow<Closing::Event>()
{
    static const std::array fields{
        field<&Closing::Event::closed_on>("closed_on"),
        field<&Closing::Event::opened_on>("opened_on"),
        field<&Closing::Event::by>("by"),
        field<&Closing::Event::reason>("reason"),
        field<&Closing::Event::approximate>("approximate"),
    };
    static const auto description = describeRows<Closing::Event>("closing.events", fields);
    return description;
}

const RecordDescription &describeClosing()
{
    static const std::array fields{
        idField<&Closing::id>(),
        field<&Closing::component_id>("component_id", true),
        field<&Closing::title>("title", true),
        field<&Closing::scope>("scope"),
        refsField<&Closing::encloses>("encloses"),
        field<&Closing::permanent>("permanent"),
        field<&Closing::made_by>("made_by"),
        field<&Closing::method>("method"),
        listField<&Closing::events>("events"),
        refsField<&Closing::late_acceptances>("late_acceptances"),
        field<&Closing::note>("note"),
        field<&Closing::withdrawn_on>("withdrawn_on"),
        field<&Closing::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<Closing>(fields);
    return description;
}

} // namespace lastrivet
