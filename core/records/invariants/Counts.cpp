// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Tongue.h"
#include "core/records/invariants/Families.h"

namespace lastrivet::invariants {

namespace {

struct Counted {
    RecordType type;
    std::string_view field;
};

constexpr Counted allCounted[] = {
    {RecordType::Step, "estimate_minutes"},     {RecordType::Squawk, "estimate_minutes"},
    {RecordType::PartLine, "quantity"},         {RecordType::PartLine, "received_quantity"},
    {RecordType::PartLine, "damaged_quantity"}, {RecordType::PartLine, "unit_price"},
    {RecordType::MaterialUse, "cure_minutes"},  {RecordType::Media, "bytes"},
    {RecordType::Flight, "landings"},
};

void check(Review &review, const Counted &counted)
{
    const auto &description = describe(counted.type);
    const Field &field = *description.find(counted.field);
    review.eachAny(counted.type, [&](const void *owner) {
        if (isWithdrawn(description, owner))
            return;
        const Scalar value = field.value(owner);
        const auto *number = std::get_if<std::int64_t>(&value);
        // Beyond that it is reported as too large already.
        if (number && *number < 0 && *number >= -largestId)
            review.report(RecordRef{counted.type, idOf(description, owner)},
                          "{0} has {1} {2}, which is below zero.",
                          {nested({field.name, {}}), std::to_string(*number)});
    });
}

} // namespace

void checkCounts(Review &review)
{
    for (const Counted &counted : allCounted)
        check(review, counted);
}

} // namespace lastrivet::invariants
