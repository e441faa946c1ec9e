// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <SQLiteCpp/Database.h>

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>

struct sqlite3_stmt;
struct sqlite3_value;

namespace lastrivet::storage {

/// A query with its rows as SQLite hands them out. Opening a project looks at millions of columns;
/// a wrapper around each would take half of that time again. Throws `SQLite::Exception`.
class RowQuery {
public:
    /// `database` outlives it.
    RowQuery(const SQLite::Database &database, const std::string &sql);

    void bind(int index, std::int64_t value);
    /// False after the last row.
    bool next();
    /// Makes it ready to be asked again.
    void reset() noexcept;
    /// The column as SQLite holds it, until the next row; its type and content may be asked since
    /// no other thread uses the connection, and cost half of what a column costs each time.
    sqlite3_value *value(int column) const;
    std::int64_t number(int column) const;
    /// Points into the row.
    std::string_view text(int column) const;

private:
    struct Finalize {
        void operator()(sqlite3_stmt *statement) const;
    };

    void require(int result, int wanted) const;

    std::unique_ptr<sqlite3_stmt, Finalize> m_statement;
};

} // namespace lastrivet::storage
