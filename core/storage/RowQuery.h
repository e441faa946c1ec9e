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

/// A prepared query whose columns are read straight from SQLite. Opening a project reads millions
/// of columns, and a wrapper object for each takes half of that time again. Throws
/// `SQLite::Exception`.
class RowQuery {
public:
    /// `database` outlives it.
    RowQuery(const SQLite::Database &database, const std::string &sql);

    void bind(int index, std::int64_t value);
    /// False after the last row.
    bool next();
    /// Makes it ready to run again.
    void reset() noexcept;
    /// The column as SQLite's own value, valid until the next row. Such an "unprotected" value may
    /// be read because no other thread uses the connection; it costs half as much as `column`
    /// functions.
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
