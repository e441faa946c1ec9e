// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Integrity.h"

#include <SQLiteCpp/Statement.h>

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

std::vector<DanglingRow> danglingRows(const Database &database)
{
    std::vector<DanglingRow> rows;
    SQLite::Statement row(database.sql(), "PRAGMA foreign_key_check");
    while (row.executeStep())
        rows.push_back({row.getColumn(0).getString(), row.getColumn(1).getInt64(),
                        row.getColumn(2).getString()});
    return rows;
}

} // namespace lastrivet::storage
