// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Tongue.h"
#include "core/records/invariants/Families.h"

#include <variant>

namespace lastrivet::invariants {

namespace {

bool isFilled(const Field &field, const void *owner)
{
    return field.isCollection() ? field.size(owner) > 0 : !isNull(field.value(owner));
}

/// A text with a default is never empty: the column takes no null, and what reads it needs one.
bool lacksItsText(const Field &field, const void *owner, const void *defaults)
{
    return field.type == FieldType::Text && !isFilled(field, owner) && isFilled(field, defaults);
}

/// Every JSON reader keeps whole numbers up to 2^53 exactly; a larger one would not be read back.
bool isTooLarge(const Field &field, const void *owner)
{
    if (field.type != FieldType::Int)
        return false;
    const Scalar value = field.value(owner);
    const auto *number = std::get_if<std::int64_t>(&value);
    return number && (*number > largestId || *number < -largestId);
}

void checkRows(Review &review, RecordRef record, const Field &list, const void *owner)
{
    for (std::size_t i = 0; i < list.size(owner); ++i) {
        for (const Field &field : list.rows->fields) {
            if (field.required && !isFilled(field, list.row(owner, i)))
                review.report(
                    record, "{0} lacks {1} in row {2} of {3}.",
                    {nested({field.name, {}}), std::to_string(i + 1), nested({list.name, {}})});
            if (isTooLarge(field, list.row(owner, i)))
                review.report(
                    record, "{0} has a number for {1} in row {2} of {3} that is too large.",
                    {nested({field.name, {}}), std::to_string(i + 1), nested({list.name, {}})});
        }
    }
}

void checkRecord(Review &review, const RecordDescription &description, const void *owner)
{
    const RecordRef record{description.type, idOf(description, owner)};
    if (record.id < 1 || record.id > largestId)
        review.report(record, "{0} has an id that is not between 1 and {1}.",
                      {std::to_string(largestId)});
    for (const Field &field : description.fields) {
        const bool isNeeded = field.required && field.type != FieldType::Id;
        if ((isNeeded && !isFilled(field, owner)) ||
            lacksItsText(field, owner, description.defaults))
            review.report(record, "{0} lacks {1}.", {nested({field.name, {}})});
        if (isTooLarge(field, owner))
            review.report(record, "{0} has a number for {1} that is too large.",
                          {nested({field.name, {}})});
        if (field.rows)
            checkRows(review, record, field, owner);
    }
}

} // namespace

void checkRequired(Review &review)
{
    for (std::size_t i = 0; i < recordTypeCount; ++i) {
        const auto &description = describe(RecordType(i));
        review.eachAny(RecordType(i),
                       [&](const void *owner) { checkRecord(review, description, owner); });
    }
}

} // namespace lastrivet::invariants
