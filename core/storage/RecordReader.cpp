// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/RecordReader.h"

#include "core/base/Error.h"
#include "core/storage/StatementUse.h"

#include <fmt/format.h>

namespace lastrivet::storage {

namespace {

[[noreturn]] void refuse(const RecordTable &table, std::string_view column, std::int64_t id)
{
    throw UnreadableInput(fmt::format("The database is damaged: {} {} has an impossible {}.",
                                      table.record().name(), id, column));
}

/// Fills one field from a column. Null leaves the default, which is what null means.
void fill(const RecordTable &table, const RecordTable::Column &to, void *target,
          const SQLite::Column &from, std::int64_t id)
{
    if (!to.field || from.isNull())
        return;
    const Field &field = *to.field;
    const auto value = scalarOf(field, from);
    if (isNull(value) || !take(field, target, value))
        refuse(table, to.name, id);
}

void fillRow(const RecordTable &table, void *target, const SQLite::Statement &row)
{
    const auto id = row.getColumn(0).getInt64();
    const auto &columns = table.columns();
    for (std::size_t i = 0; i < columns.size(); ++i)
        fill(table, columns[i], target, row.getColumn(int(i)), id);
}

std::string select(const RecordTable &table)
{
    return fmt::format(R"(SELECT {} FROM "{}")", table.columnList(), table.name());
}

} // namespace

RecordReader::RecordReader(const SQLite::Database &database)
    : m_database(database)
    , m_statements(recordTables().size())
{
}

Records RecordReader::readAll()
{
    Records records;
    for (const auto &table : recordTables()) {
        if (table.collection())
            readCollection(records, table);
        else
            readTable(records, table);
    }
    records.profile_copy = readProfile();
    return records;
}

void RecordReader::readTable(Records &records, const RecordTable &table)
{
    SQLite::Statement rows(m_database, select(table) + R"( ORDER BY "id")");
    std::int64_t id = 0;
    while (rows.executeStep()) {
        id = rows.getColumn(0).getInt64();
        if (id < 1 || id > largestId)
            refuse(table, "id", id);
        fillRow(table,
                table.type() == RecordType::Project ? &records.project
                                                    : records.table(table.type()).appendAny(id),
                rows);
    }
    if (id == 0 && table.type() == RecordType::Project)
        throw UnreadableInput("The project was never finished being made; make it anew.");
}

void RecordReader::readCollection(Records &records, const RecordTable &table)
{
    SQLite::Statement rows(m_database,
                           fmt::format("{} ORDER BY {}", select(table), table.keyList()));
    std::int64_t owner = 0;
    void *record = nullptr;
    while (rows.executeStep()) {
        const auto id = rows.getColumn(0).getInt64();
        if (!record || id != owner)
            record = records.table(table.type()).editAny(id);
        if (!record)
            refuse(table, table.collection()->name, id);
        owner = id;
        readItems(table, rows, record);
    }
}

void RecordReader::readItems(const RecordTable &table, SQLite::Statement &rows, void *record)
{
    const Field *list = table.collection();
    fillRow(table, list && list->addRow ? list->addRow(record) : record, rows);
}

void RecordReader::readAgain(Records &records, RecordRef ref)
{
    const auto &description = describe(ref.type);
    const auto record = description.make();
    for (const auto &table : tablesOf(ref.type)) {
        auto &rows = statementFor(table);
        const StatementUse use(rows);
        rows.bind(1, ref.id);
        bool found = false;
        for (; rows.executeStep(); found = true)
            readItems(table, rows, record.get());
        if (!table.collection() && !found) {
            if (ref.type != RecordType::Project)
                records.table(ref.type).erase(ref.id);
            return;
        }
    }
    records.put(ref.type, record.get());
}

std::string RecordReader::readProfile()
{
    SQLite::Statement row(m_database, R"(SELECT "content" FROM "profile_copy")");
    return row.executeStep() ? row.getColumn(0).getString() : std::string();
}

SQLite::Statement &RecordReader::statementFor(const RecordTable &table)
{
    auto &statement = m_statements[std::size_t(&table - recordTables().data())];
    if (!statement) {
        statement.emplace(m_database, fmt::format(R"({} WHERE "{}"=? ORDER BY {})", select(table),
                                                  table.columns().front().name, table.keyList()));
    }
    return *statement;
}

} // namespace lastrivet::storage
