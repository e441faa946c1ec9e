// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"
#include "core/records/RecordType.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string_view>
#include <variant>

namespace lastrivet {

/// One value of a field, as databases and interchange files see it. Texts point into their record.
/// `std::monostate` is null.
using Scalar = std::variant<std::monostate, bool, std::int64_t, double, std::string_view, Moment>;

inline bool isNull(const Scalar &value)
{
    return value.index() == 0;
}

enum class FieldType {
    Id,     ///< the record's own id
    Ref,    ///< an id of a record of `target` (of the row's `subject` when that is absent), or null
    Refs,   ///< a set of ids of records of `target`
    Set,    ///< a set of words
    List,   ///< ordered rows, described by `rows`
    Int,    ///< a whole number
    Real,   ///< a finite number
    Bool,   ///< true or false
    Text,   ///< UTF-8 text; empty is null
    Moment, ///< a `Moment`
    Enum,   ///< one word
    Numbers, ///< ordered finite numbers
    Record,  ///< the name of a record type
};

struct RowDescription;

/// A field of a record or of a list row: its name and type, and functions to read and set it.
///
/// Scalar fields have `value` and `assign`; sets and numbers have `size`, `item`, `add`, `clear`;
/// lists have `size`, `row`, `addRow`, `clear`, `rows`. `assign` and `add` return false when the
/// value is not of the field's type, is no word of its vocabulary, or is an id out of bounds.
struct Field {
    std::string_view name;
    FieldType type;
    bool required = false;
    std::optional<RecordType> target{};
    std::span<const std::string_view> words{};

    Scalar (*value)(const void *record) = nullptr;
    bool (*assign)(void *record, const Scalar &value) = nullptr;

    std::size_t (*size)(const void *record) = nullptr;
    Scalar (*item)(const void *record, std::size_t index) = nullptr;
    bool (*add)(void *record, const Scalar &value) = nullptr;
    void (*clear)(void *record) = nullptr;
    const void *(*row)(const void *record, std::size_t index) = nullptr;
    void *(*addRow)(void *record) = nullptr;
    const RowDescription *rows = nullptr;
    /// The schema step that added it. In its table the columns of later steps come last, wherever
    /// the field stands here.
    int schema = 1;

    /// The same field, of a later schema step.
    Field addedIn(int step) const
    {
        Field later = *this;
        later.schema = step;
        return later;
    }
    bool isCollection() const { return size != nullptr; }
};

/// The fields of one row of a list, in order.
struct RowDescription {
    std::string_view name;
    std::span<const Field> fields;
    /// A row with every field at its default.
    const void *defaults;
};

/// The fields of one record type in order; SQL columns, JSON keys and CSV headers follow it.
struct RecordDescription {
    RecordType type;
    std::span<const Field> fields;
    /// A record with every field at its default.
    const void *defaults;
    std::shared_ptr<void> (*make)();
    std::shared_ptr<void> (*copy)(const void *record);
    bool (*equal)(const void *a, const void *b);

    std::string_view name() const { return word(type); }
    const Field *find(std::string_view fieldName) const;
};

/// The description of a record type.
const RecordDescription &describe(RecordType type);

/// The id of any record; 1 for the project.
std::int64_t idOf(const RecordDescription &description, const void *record);
/// True when the record's `withdrawn_on` is set.
bool isWithdrawn(const RecordDescription &description, const void *record);

} // namespace lastrivet
