// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Description.h"

#include "core/records/Descriptions.h"

#include <algorithm>

namespace lastrivet {

const Field *RecordDescription::find(std::string_view fieldName) const
{
    const auto found = std::find_if(fields.begin(), fields.end(),
                                    [fieldName](const Field &f) { return f.name == fieldName; });
    return found == fields.end() ? nullptr : &*found;
}

const RecordDescription &describe(RecordType type)
{
    static const RecordDescription *const all[] = {
        &describeProjectFacts(), &describePerson(),      &describeComponent(),
        &describeStep(),         &describeWorkSession(), &describeClosing(),
        &describeHoldPoint(),    &describeCheck(),       &describeInspection(),
        &describeSignOff(),      &describeSquawk(),      &describeDeviation(),
        &describeBulletin(),     &describeFastener(),    &describeMeasurement(),
        &describeTool(),         &describePartLine(),    &describeMaterialLot(),
        &describeMaterialUse(),  &describeMedia(),       &describeExpense(),
        &describeCreditTask(),   &describeEquipment(),   &describeWeighing(),
        &describeLoadingCase(),  &describeEnvelope(),    &describeCertificateDocument(),
        &describeFlight(),
    };
    return *all[std::size_t(type)];
}

std::int64_t idOf(const RecordDescription &description, const void *record)
{
    if (description.type == RecordType::Project)
        return 1;
    const auto value = description.fields.front().value(record);
    const auto *id = std::get_if<std::int64_t>(&value);
    return id ? *id : 0;
}

bool isWithdrawn(const RecordDescription &description, const void *record)
{
    const Field *withdrawn = description.find("withdrawn_on");
    return withdrawn && !isNull(withdrawn->value(record));
}

} // namespace lastrivet
