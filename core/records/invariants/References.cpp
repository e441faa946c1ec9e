// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Tongue.h"
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

/// The record type that a row's id field points at: its own target, or the type its subject names.
RecordType targetOf(const Field &field, std::span<const Field> siblings, const void *row)
{
    if (field.target)
        return *field.target;
    const auto subject = std::find_if(siblings.begin(), siblings.end(), [](const Field &sibling) {
        return sibling.type == FieldType::Record;
    });
    const Scalar name = subject->value(row);
    return *parseWord<RecordType>(std::get<std::string_view>(name));
}

template <class Body>
void eachScalarReference(std::span<const Field> fields, const void *owner, Body &&body)
{
    for (const Field &field : fields) {
        if (field.type != FieldType::Ref)
            continue;
        const Scalar value = field.value(owner);
        if (const auto *id = std::get_if<std::int64_t>(&value))
            body(field, RecordRef{targetOf(field, fields, owner), *id});
    }
}

/// Calls `body(field, named)` for every id that a record names, itself or in a list.
template <class Body>
void eachReference(const RecordDescription &description, const void *owner, Body &&body)
{
    eachScalarReference(description.fields, owner, body);
    for (const Field &field : description.fields) {
        const std::size_t count = field.isCollection() ? field.size(owner) : 0;
        for (std::size_t i = 0; i < count && field.type == FieldType::Refs; ++i)
            body(field, RecordRef{*field.target, std::get<std::int64_t>(field.item(owner, i))});
        for (std::size_t i = 0; i < count && field.rows; ++i) {
            eachScalarReference(field.rows->fields, field.row(owner, i),
                                [&](const Field &, RecordRef named) { body(field, named); });
        }
    }
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

/// True when a record of the type could name one of the `gone` records.
bool canName(std::span<const Field> fields, std::span<const RecordRef> gone)
{
    return std::any_of(fields.begin(), fields.end(), [&](const Field &field) {
        if (field.rows)
            return canName(field.rows->fields, gone);
        if (field.type != FieldType::Ref && field.type != FieldType::Refs)
            return false;
        return !field.target || std::any_of(gone.begin(), gone.end(), [&](RecordRef record) {
            return record.type == *field.target;
        });
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
