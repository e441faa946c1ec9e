// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/RowQuery.h"

#include <SQLiteCpp/Exception.h>
#include <sqlite3.h>

namespace lastrivet::storage {

void RowQuery::Finalize::operator()(sqlite3_stmt *statement) const
{
    sqlite3_finalize(statement);
}

RowQuery::RowQuery(const SQLite::Database &database, const std::string &sql)
{
    sqlite3_stmt *made = nullptr;
    const int result =
        sqlite3_prepare_v2(database.getHandle(), sql.c_str(), int(sql.size()), &made, nullptr);
    m_statement.reset(made);
    if (result != SQLITE_OK)
        throw SQLite::Exception(database.getHandle(), result);
}

void RowQuery::bind(int index, std::int64_t value)
{
    require(sqlite3_bind_int64(m_statement.get(), index, value), SQLITE_OK);
}

bool RowQuery::next()
{
    const int result = sqlite3_step(m_statement.get());
    if (result == SQLITE_ROW)
        return true;
    require(result, SQLITE_DONE);
    return false;
}

void RowQuery::reset() noexcept
{
    // Its result only repeats the error of the last step, which was thrown.
    sqlite3_reset(m_statement.get());
}

sqlite3_value *RowQuery::value(int column) const
{
    return sqlite3_column_value(m_statement.get(), column);
}

std::int64_t RowQuery::number(int column) const
{
    return sqlite3_column_int64(m_statement.get(), column);
}

std::string_view RowQuery::text(int column) const
{
    const auto *text =
        reinterpret_cast<const char *>(sqlite3_column_text(m_statement.get(), column));
    return {text ? text : "", std::size_t(sqlite3_column_bytes(m_statement.get(), column))};
}

void RowQuery::require(int result, int wanted) const
{
    if (result != wanted)
        throw SQLite::Exception(sqlite3_db_handle(m_statement.get()), result);
}

} // namespace lastrivet::storage
