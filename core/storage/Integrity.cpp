// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Integrity.h"

#include "core/storage/RecordTable.h"

#include <SQLiteCpp/Statement.h>

#include <fmt/format.h>

namespace lastrivet::storage {

std::vector<std::string> damagesOf(const Database &database)
{
    std::vector<std::string> damages;
    SQLite::Statement line(database.sql(), "PRAGMA integrity_check(100)");
    while (line.executeStep()) {
        if (auto text = line.getColumn(0).getString(); text != "ok")
            damages.push_back(std::move(text));
    }
    return damages;
}

std::optional<std::string> firstDamageOf(const Database &database, const std::stop_token &stop)
{
    std::vector<std::string> tables;
    SQLite::Statement table(database.sql(),
                            R"(SELECT replace("name",'''','''''') FROM pragma_table_list
                               WHERE "schema"='main' AND "type" IN ('table','shadow'))");
    while (table.executeStep())
        tables.push_back(table.getColumn(0).getString());
    table.reset();
    for (const auto &name : tables) {
        if (stop.stop_requested())
            return std::nullopt;
        SQLite::Statement line(database.sql(), fmt::format("PRAGMA quick_check('{}')", name));
        if (line.executeStep() && line.getColumn(0).getString() != "ok")
            return line.getColumn(0).getString();
    }
    return std::nullopt;
}

std::vector<DanglingRow> danglingRows(const Database &database)
{
    std::vector<DanglingRow> rows;
    SQLite::Statement row(database.sql(), "PRAGMA foreign_key_check");
    while (row.executeStep())
        rows.push_back({row.getColumn(0).getString(), row.getColumn(1).getInt64(),
                        row.getColumn(2).getString()});
    return rows;
}

std::optional<RecordRef> ownerOfLeftRows(const Database &database)
{
    for (const auto &table : recordTables()) {
        if (!table.collection())
            continue;
        const auto &owner = table.columns().front().name;
        SQLite::Statement row(database.sql(),
                              fmt::format(R"(SELECT "{0}" FROM "{1}" WHERE "{0}" NOT IN
                                             (SELECT "id" FROM "{2}") LIMIT 1)",
                                          owner, table.name(),
                                          tablesOf(table.type()).front().name()));
        if (row.executeStep())
            return RecordRef{table.type(), row.getColumn(0).getInt64()};
    }
    return std::nullopt;
}

} // namespace lastrivet::storage
