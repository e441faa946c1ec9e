// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"
#include "core/storage/RecordTable.h"

#include <SQLiteCpp/Database.h>

#include <vector>

namespace lastrivet::storage {

/// Reads records out of the database, following their descriptions.
///
/// Throws `UnreadableInput`, naming the record, for a value that no program of ours can have
/// written.
class RecordReader {
public:
    /// `database` outlives it.
    explicit RecordReader(const SQLite::Database &database);

    Records readAll();
    /// Makes `records` say about this record what the database says, be it that it is gone.
    void readAgain(Records &records, RecordRef record);
    std::string readProfile();

private:
    void readTable(Records &records, const RecordTable &table);
    void readCollection(Records &records, const RecordTable &table);
    void readItems(const RecordTable &table, SQLite::Statement &rows, void *record);
    SQLite::Statement &statementFor(const RecordTable &table);

    const SQLite::Database &m_database;
    /// Reads one record's rows, by place in `recordTables`; made when first wanted.
    std::vector<std::optional<SQLite::Statement>> m_statements;
};

} // namespace lastrivet::storage
