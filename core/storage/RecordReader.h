// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"
#include "core/storage/RecordTable.h"
#include "core/storage/RowQuery.h"

#include <optional>
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
    /// Reads all records of the type into `records`, which has none of them yet.
    void read(Records &records, RecordType type);
    /// Reads this record anew; removes it from `records` when it is gone.
    void readAgain(Records &records, RecordRef record);
    std::string readProfile();

private:
    void readTable(Records &records, const RecordTable &table);
    void readCollection(Records &records, const RecordTable &table);
    RowQuery &queryFor(const RecordTable &table);

    const SQLite::Database &m_database;
    /// Reads one record's rows, by place in `recordTables`; made when first wanted.
    std::vector<std::optional<RowQuery>> m_queries;
    std::optional<RowQuery> m_profile;
};

} // namespace lastrivet::storage
