// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/ProjectFacts.h"

#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/Person.h"

namespace lastrivet {

const RecordDescription &describeProjectFacts()
{
    static const std::array fields{
        field<&ProjectFacts::name>("name", true),
        field<&ProjectFacts::aircraft_type>("aircraft_type"),
        field<&ProjectFacts::designer>("designer"),
        field<&ProjectFacts::model>("model"),
        field<&ProjectFacts::registration>("registration"),
        field<&ProjectFacts::serial_number>("serial_number"),
        field<&ProjectFacts::kit_number>("kit_number"),
        field<&ProjectFacts::authority_file>("authority_file"),
        field<&ProjectFacts::maximum_weight>("maximum_weight"),
        field<&ProjectFacts::weight_unit>("weight_unit"),
        field<&ProjectFacts::origin>("origin"),
        field<&ProjectFacts::profile>("profile", true),
        field<&ProjectFacts::builder_id>("builder_id"),
        field<&ProjectFacts::builder_address>("builder_address"),
        field<&ProjectFacts::started_on>("started_on"),
        field<&ProjectFacts::time_zone>("time_zone"),
        field<&ProjectFacts::currency>("currency"),
        field<&ProjectFacts::units>("units"),
        field<&ProjectFacts::note>("note"),
    };
    static const auto description = describeRecord<ProjectFacts>(fields);
    return description;
}

} // namespace lastrivet
