// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/RecordWriter.h"

#include "core/storage/StatementUse.h"

#include <fmt/format.h>

namespace lastrivet::storage {

namespace {

std::string insertText(const RecordTable &table)
{
    std::string places = "?";
    for (std::size_t i = 1; i < table.columns().size(); ++i)
        places += ",?";
    return fmt::format(R"(INSERT INTO "{}" ({}) VALUES ({}))", table.name(), table.columnList(),
                       places);
}

std::string updateText(const RecordTable &table)
{
    std::string assignments;
    for (std::size_t i = table.keyColumns(); i < table.columns().size(); ++i) {
        assignments += assignments.empty() ? "" : ",";
        assignments += fmt::format(R"("{}"=?)", table.columns()[i].name);
    }
    return fmt::format(R"(UPDATE "{}" SET {} WHERE {})", table.name(), assignments,
                       table.keyCondition());
}

void run(SQLite::Statement &statement)
{
    const StatementUse use(statement);
    statement.exec();
}

} // namespace

RecordWriter::RecordWriter(const SQLite::Database &database)
    : m_database(database)
    , m_statements(recordTables().size())
{
}

void RecordWriter::write(RecordType type, const void *before, const void *after)
{
    for (const auto &table : tablesOf(type)) {
        writeRows(table, before ? table.rowsOf(before) : std::vector<Row>{},
                  after ? table.rowsOf(after) : std::vector<Row>{});
    }
}

void RecordWriter::writeRows(const RecordTable &table, const std::vector<Row> &before,
                             const std::vector<Row> &after)
{
    auto old = before.begin();
    for (const auto &row : after) {
        for (; old != before.end() && (*old)[table.keyColumns() - 1] < row[table.keyColumns() - 1];
             ++old)
            erase(table, *old);
        const bool isKnown =
            old != before.end() && (*old)[table.keyColumns() - 1] == row[table.keyColumns() - 1];
        if (!isKnown)
            insert(table, row);
        else if (*old != row)
            update(table, row);
        if (isKnown)
            ++old;
    }
    for (; old != before.end(); ++old)
        erase(table, *old);
}

void RecordWriter::insert(const RecordTable &table, const Row &row)
{
    auto &statement = statementsFor(table).insert;
    if (!statement)
        statement.emplace(m_database, insertText(table));
    for (std::size_t i = 0; i < row.size(); ++i)
        bind(*statement, int(i) + 1, row[i]);
    run(*statement);
}

void RecordWriter::update(const RecordTable &table, const Row &row)
{
    auto &statement = statementsFor(table).update;
    if (!statement)
        statement.emplace(m_database, updateText(table));
    const std::size_t keys = table.keyColumns();
    const std::size_t others = row.size() - keys;
    for (std::size_t i = 0; i < row.size(); ++i)
        bind(*statement, int(i < keys ? others + i : i - keys) + 1, row[i]);
    run(*statement);
}

void RecordWriter::erase(const RecordTable &table, const Row &row)
{
    auto &statement = statementsFor(table).erase;
    if (!statement) {
        statement.emplace(m_database, fmt::format(R"(DELETE FROM "{}" WHERE {})", table.name(),
                                                  table.keyCondition()));
    }
    for (std::size_t i = 0; i < table.keyColumns(); ++i)
        bind(*statement, int(i) + 1, row[i]);
    run(*statement);
}

void RecordWriter::writeProfile(std::string_view content)
{
    SQLite::Statement statement(m_database,
                                R"(INSERT INTO "profile_copy" ("id","content") VALUES (1,?)
                                   ON CONFLICT ("id") DO UPDATE SET "content"=excluded."content")");
    statement.bind(1, std::string(content));
    statement.exec();
}

RecordWriter::Statements &RecordWriter::statementsFor(const RecordTable &table)
{
    return m_statements[std::size_t(&table - recordTables().data())];
}

} // namespace lastrivet::storage
