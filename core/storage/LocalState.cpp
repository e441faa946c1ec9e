// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/LocalState.h"

#include <SQLiteCpp/Statement.h>

namespace lastrivet::storage {

std::optional<std::string> localState(const Database &database, std::string_view key)
{
    SQLite::Statement row(database.sql(), R"(SELECT "value" FROM "local_state" WHERE "key"=?)");
    row.bind(1, std::string(key));
    return row.executeStep() ? std::optional(row.getColumn(0).getString()) : std::nullopt;
}

void setLocalState(Database &database, std::string_view key, std::optional<std::string_view> value)
{
    SQLite::Statement statement(database.sql(),
                                value ? R"(INSERT OR REPLACE INTO "local_state" VALUES (?,?))"
                                      : R"(DELETE FROM "local_state" WHERE "key"=?)");
    statement.bind(1, std::string(key));
    if (value)
        statement.bind(2, std::string(*value));
    statement.exec();
}

} // namespace lastrivet::storage
