// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Flight.h"

#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/Person.h"

namespace lastrivet {

const RecordDescription &describeFlight()
{
    static const std::array fields{
        idField<&Flight::id>(),
        field<&Flight::flown_on>("flown_on", true),
        field<&Flight::minutes>("minutes", true),
        field<&Flight::landings>("landings"),
        field<&Flight::pilot_id>("pilot_id"),
        field<&Flight::faults>("faults"),
        field<&Flight::note>("note"),
        field<&Flight::withdrawn_on>("withdrawn_on"),
        field<&Flight::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<Flight>(fields);
    return description;
}

} // namespace lastrivet
