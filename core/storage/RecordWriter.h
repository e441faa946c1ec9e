// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/RecordTable.h"
#include "core/storage/StatementUse.h"

#include <string_view>
#include <vector>

namespace lastrivet::storage {

/// Writes records into the database, following their descriptions; only what differs is touched.
class RecordWriter {
public:
    /// `database` outlives it.
    explicit RecordWriter(const SQLite::Database &database);

    /// Makes the database hold `after` where it holds `before`; null for no record.
    void write(RecordType type, const void *before, const void *after);
    void writeProfile(std::string_view content);

private:
    struct Statements {
        KeptStatement insert;
        KeptStatement update;
        KeptStatement erase;
    };

    void writeRows(const RecordTable &table, const std::vector<Row> &before,
                   const std::vector<Row> &after);
    void insert(const RecordTable &table, const Row &row);
    void update(const RecordTable &table, const Row &row);
    void erase(const RecordTable &table, const Row &row);
    Statements &statementsFor(const RecordTable &table);

    const SQLite::Database &m_database;
    /// By place in `recordTables`; made when first wanted.
    std::vector<Statements> m_statements;
};

} // namespace lastrivet::storage
