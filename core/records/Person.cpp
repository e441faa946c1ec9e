// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Person.h"

#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"

namespace lastrivet {

const RecordDescription &describePerson()
{
    static const std::array fields{
        idField<&Person::id>(),
        field<&Person::name>("name", true),
        setField<&Person::roles, Role>("roles", true),
        field<&Person::credential>("credential"),
        field<&Person::contact>("contact"),
        field<&Person::note>("note"),
        field<&Person::withdrawn_on>("withdrawn_on"),
        field<&Person::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<Person>(fields);
    return description;
}

} // namespace lastrivet
