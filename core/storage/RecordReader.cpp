// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/RecordReader.h"

#include "core/base/Error.h"

#include <fmt/format.h>
#include <sqlite3.h>

namespace lastrivet::storage {

namespace {

/// One use of a kept query; resets it at the end, also after an error.
class Asking {
public:
    explicit Asking(RowQuery &query)
        : m_query(query)
    {
    }
    ~Asking() { m_query.reset(); }
    Asking(const Asking &) = delete;
    Asking &operator=(const Asking &) = delete;

private:
    RowQuery &m_query;
};

[[noreturn]] void refuse(const RecordTable &table, std::string_view column, std::int64_t id)
{
    throw UnreadableInput(
        Message{"The database is damaged: {0} {1} has an impossible {2}.",
                {std::string(table.record().name()), std::to_string(id), std::string(column)}});
}

/// Null leaves the default, which is what null means.
void fillRow(const RecordTable &table, void *target, const RowQuery &row)
{
    const auto &columns = table.columns();
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const Field *field = columns[i].field;
        if (!field)
            continue;
        sqlite3_value *stored = row.value(int(i));
        const int type = sqlite3_value_type(stored);
        if (type == SQLITE_NULL)
            continue;
        const auto value = scalarOf(*field, stored, type);
        if (isNull(value) || !take(*field, target, value))
            refuse(table, columns[i].name, row.number(0));
    }
}

/// Fills the record, or what its list or set has in this row.
void fillFrom(const RecordTable &table, void *record, const RowQuery &row)
{
    const Field *list = table.collection();
    fillRow(table, list && list->addRow ? list->addRow(record) : record, row);
}

std::string select(const RecordTable &table)
{
    return fmt::format(R"(SELECT {} FROM "{}")", table.columnList(), table.name());
}

} // namespace

RecordReader::RecordReader(const SQLite::Database &database)
    : m_database(database)
    , m_queries(recordTables().size())
{
}

Records RecordReader::readAll()
{
    Records records;
    for (std::size_t i = 0; i < recordTypeCount; ++i)
        read(records, RecordType(i));
    records.profile_copy = readProfile();
    return records;
}

void RecordReader::read(Records &records, RecordType type)
{
    for (const auto &table : tablesOf(type)) {
        if (table.collection())
            readCollection(records, table);
        else
            readTable(records, table);
    }
}

void RecordReader::readTable(Records &records, const RecordTable &table)
{
    RowQuery rows(m_database, select(table) + R"( ORDER BY "id")");
    std::int64_t id = 0;
    while (rows.next()) {
        id = rows.number(0);
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
    RowQuery rows(m_database, fmt::format("{} ORDER BY {}", select(table), table.keyList()));
    std::int64_t owner = 0;
    void *record = nullptr;
    while (rows.next()) {
        const auto id = rows.number(0);
        if (!record || id != owner)
            record = records.table(table.type()).editAny(id);
        if (!record)
            refuse(table, table.collection()->name, id);
        owner = id;
        fillFrom(table, record, rows);
    }
}

void RecordReader::readAgain(Records &records, RecordRef ref)
{
    const auto &description = describe(ref.type);
    const auto record = description.make();
    for (const auto &table : tablesOf(ref.type)) {
        auto &rows = queryFor(table);
        const Asking asking(rows);
        rows.bind(1, ref.id);
        bool found = false;
        for (; rows.next(); found = true)
            fillFrom(table, record.get(), rows);
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
    if (!m_profile)
        m_profile.emplace(m_database, R"(SELECT "content" FROM "profile_copy")");
    const Asking asking(*m_profile);
    return m_profile->next() ? std::string(m_profile->text(0)) : std::string();
}

RowQuery &RecordReader::queryFor(const RecordTable &table)
{
    auto &query = m_queries[std::size_t(&table - recordTables().data())];
    if (!query) {
        query.emplace(m_database, fmt::format(R"({} WHERE "{}"=? ORDER BY {})", select(table),
                                              table.columns().front().name, table.keyList()));
    }
    return *query;
}

} // namespace lastrivet::storage
