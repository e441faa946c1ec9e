// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/TableRows.h"

#include <fmt/format.h>

namespace lastrivet::storage {

TableRows::TableRows(const Database &database, const RecordTable &table)
    : TableRows(database, table.name(), table.columnList(), table.keyList())
{
}

TableRows::TableRows(const Database &database, std::string_view table, std::string_view columns)
    : TableRows(database, table, columns, R"("id")")
{
}

TableRows::TableRows(const Database &database, std::string_view table, std::string_view columns,
                     std::string_view keys)
    : m_statement(database.sql(),
                  fmt::format(R"(SELECT {} FROM "{}" ORDER BY {})", columns, table, keys))
{
    advance();
}

void TableRows::advance()
{
    m_row.clear();
    if (!m_statement.executeStep())
        return;
    for (int i = 0; i < m_statement.getColumnCount(); ++i)
        m_row.push_back(cellOf(m_statement.getColumn(i)));
}

} // namespace lastrivet::storage
