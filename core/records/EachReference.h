// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Description.h"

#include <algorithm>

// Visits the references between records. Included only where references themselves are examined.
namespace lastrivet {

/// The record type that a row's id field points at: its own target, or the type its subject names.
inline RecordType targetOf(const Field &field, std::span<const Field> siblings, const void *row)
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

/// True when a record of the type could name one of the `gone` records.
inline bool canName(std::span<const Field> fields, std::span<const RecordRef> gone)
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

} // namespace lastrivet
