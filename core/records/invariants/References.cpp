// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Tongue.h"
#include "core/records/EachReference.h"
#include "core/records/invariants/Families.h"

#include <algorithm>

namespace lastrivet::invariants {

namespace {

/// A withdrawn record that these name is ignored by every question (of `after`, passed through).
bool mayNameWithdrawn(const RecordDescription &owner, std::string_view field)
{
    return (owner.type == RecordType::Media && field == "links") ||
           (owner.type == RecordType::Inspection && field == "hold_point_ids") ||
           (owner.type == RecordType::Step && field == "after");
}

void checkNamed(Review &review, const RecordDescription &description, const void *owner,
                const Field &field, RecordRef named)
{
    const RecordRef record{description.type, idOf(description, owner)};
    const void *found = review.records().find(named.type, named.id);
    if (!found)
        review.report(record, "{0} names {1} in {2}, which is not on record.",
                      {review.nameOf(named), nested({field.name, {}})});
    else if (!isWithdrawn(description, owner) && isWithdrawn(describe(named.type), found) &&
             !mayNameWithdrawn(description, field.name))
        review.report(record, "{0} names {1} in {2}, which is withdrawn.",
                      {review.nameOf(named), nested({field.name, {}})});
}

void checkAll(Review &review, const RecordDescription &description, const void *owner)
{
    eachReference(description, owner, [&](const Field &field, RecordRef named) {
        checkNamed(review, description, owner, field, named);
    });
}

/// Records outside the review that name one that is withdrawn or no longer there.
void checkThoseWhoName(Review &review, std::span<const RecordRef> gone)
{
    const Review everything{review.records(), review.profile()};
    for (std::size_t i = 0; i < recordTypeCount; ++i) {
        const auto &description = describe(RecordType(i));
        if (!canName(description.fields, gone))
            continue;
        everything.eachAny(RecordType(i), [&](const void *owner) {
            eachReference(description, owner, [&](const Field &field, RecordRef named) {
                if (std::binary_search(gone.begin(), gone.end(), named))
                    checkNamed(review, description, owner, field, named);
            });
        });
    }
}

} // namespace

void checkReferences(Review &review)
{
    for (std::size_t i = 0; i < recordTypeCount; ++i) {
        const auto &description = describe(RecordType(i));
        review.eachAny(RecordType(i),
                       [&](const void *owner) { checkAll(review, description, owner); });
    }
    if (const auto gone = review.gone(); !gone.empty())
        checkThoseWhoName(review, gone);
}

} // namespace lastrivet::invariants
