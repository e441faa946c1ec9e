// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/invariants/Families.h"

namespace lastrivet::invariants {

namespace {

template <class Record> void checkOwners(Review &review, std::string_view pattern)
{
    if (!review.touchesAny(RecordType::Closing, Record::type))
        return;
    for (const Record &record : review.records().template of<Record>()) {
        if (record.withdrawn_on)
            continue;
        const RecordRef own{Record::type, record.id.value()};
        const RecordRef owner{RecordType::Closing, record.closing_id.value()};
        if (!review.covers(own) && !review.covers(owner))
            continue;
        const Closing *closing = review.records().findLive(record.closing_id);
        if (closing && closing->made_by == MadeBy::Factory)
            review.report(record, pattern, {review.nameOf(closing->id)});
    }
}

} // namespace

void checkFactory(Review &review)
{
    checkOwners<HoldPoint>(review,
                           "{0} is of {1}, which was made in the factory and has no hold points.");
    checkOwners<Check>(review, "{0} is of {1}, which was made in the factory and has no checks.");
}

} // namespace lastrivet::invariants
