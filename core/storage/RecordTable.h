// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Description.h"
#include "core/storage/Cell.h"

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::storage {

/// A table of the database: the rows of one record type, or of one of its sets and lists.
///
/// The first column is always the record's id, and the key columns come first.
class RecordTable {
public:
    struct Column {
        std::string name;
        /// Null for the columns that only locate a row: the project's id, a set's or list's owner,
        /// a position.
        const Field *field;
    };

    explicit RecordTable(const RecordDescription &record);
    RecordTable(const RecordDescription &record, const Field &collection);

    const std::string &name() const { return m_name; }
    const RecordDescription &record() const { return *m_record; }
    RecordType type() const { return m_record->type; }
    /// The set or list that it holds; null for the table of the records themselves.
    const Field *collection() const { return m_collection; }
    const std::vector<Column> &columns() const { return m_columns; }
    std::size_t keyColumns() const { return m_keyColumns; }

    /// What the record has in this table, by ascending key.
    std::vector<Row> rowsOf(const void *record) const;

    std::string columnList() const;
    /// `"a"=? AND "b"=?` over the key.
    std::string keyCondition() const;
    /// `"a","b"` over the key.
    std::string keyList() const;

private:
    Row rowOf(const void *from, std::int64_t id, std::int64_t position) const;

    const RecordDescription *m_record;
    const Field *m_collection = nullptr;
    std::string m_name;
    std::vector<Column> m_columns;
    std::size_t m_keyColumns = 1;
};

/// All tables of records, each type's own table before those of its sets and lists.
std::span<const RecordTable> recordTables();
std::span<const RecordTable> tablesOf(RecordType type);
const RecordTable *findRecordTable(std::string_view name);
/// The place of a column in the rows of a table; their size when it has no such column.
std::size_t columnOf(const RecordTable &table, std::string_view name);

/// The table with the project's copy of its rule profile; journalled like the records.
inline constexpr std::string_view profileTable = "profile_copy";

/// Numbers as the text that a cell keeps, and back; false when the text is none.
std::string numbersText(const Field &field, const void *row);
bool readNumbers(const Field &field, void *row, std::string_view text);
/// Gives a field of a record or list row its value, or a set one more item; false when the value
/// is none that the field takes.
bool take(const Field &field, void *row, const Scalar &value);

} // namespace lastrivet::storage
