// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/Cell.h"
#include "core/storage/Database.h"
#include "core/storage/RecordTable.h"

#include <SQLiteCpp/Statement.h>

#include <string_view>

namespace lastrivet::storage {

/// Walks the rows of a table by ascending key, one at a time.
class TableRows {
public:
    /// `database` outlives it.
    TableRows(const Database &database, const RecordTable &table);
    /// Of a table whose first column is its key.
    TableRows(const Database &database, std::string_view table, std::string_view columns);

    bool isAtEnd() const { return m_row.empty(); }
    const Row &row() const { return m_row; }
    void advance();

private:
    TableRows(const Database &database, std::string_view table, std::string_view columns,
              std::string_view keys);

    SQLite::Statement m_statement;
    Row m_row;
};

} // namespace lastrivet::storage
