// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Check.h"

#include "core/records/Closing.h"
#include "core/records/Descriptions.h"
#include "core/records/FieldOf.h"
#include "core/records/Media.h"
#include "core/records/Person.h"

namespace lastrivet {

const RecordDescription &describeCheck()
{
    static const std::array fields{
        idField<&Check::id>(),
        field<&Check::closing_id>("closing_id", true),
        field<&Check::item>("item", true),
        field<&Check::source>("source"),
        field<&Check::planned_on>("planned_on"),
        refsField<&Check::may_follow>("may_follow"),
        field<&Check::done_on>("done_on"),
        field<&Check::done_by>("done_by"),
        field<&Check::not_applicable>("not_applicable"),
        refsField<&Check::media_ids>("media_ids"),
        field<&Check::note>("note"),
        field<&Check::withdrawn_on>("withdrawn_on"),
        field<&Check::withdrawn_why>("withdrawn_why"),
    };
    static const auto description = describeRecord<Check>(fields);
    return description;
}

} // namespace lastrivet
