// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/FilesNamed.h"

#include "core/storage/Changeset.h"
#include "core/storage/Journal.h"

#include <SQLiteCpp/Statement.h>

#include <filesystem>

namespace lastrivet::storage {

namespace {

void addFiles(const ChangedRow &change, std::set<std::string> &names)
{
    if (change.table != word(RecordType::Media))
        return;
    for (const auto *cells : {&change.before, &change.after}) {
        for (std::size_t i = 0; i < cells->size(); ++i) {
            const auto &cell = (*cells)[i];
            if (change.recordTable->columns()[i].name == "file" && cell &&
                std::holds_alternative<std::string>(*cell))
                names.insert(fileName(std::get<std::string>(*cell)));
        }
    }
}

} // namespace

std::string fileName(std::string_view file)
{
    return std::filesystem::path(file).lexically_normal().generic_string();
}

std::set<std::string> filesOnRecord(const Database &database)
{
    std::set<std::string> names;
    SQLite::Statement rows(database.sql(),
                           R"(SELECT "file" FROM "media" WHERE "file" IS NOT NULL)");
    while (rows.executeStep())
        names.insert(fileName(rows.getColumn(0).getString()));
    return names;
}

std::set<std::string> filesEverNamed(Database &database)
{
    std::set<std::string> names;
    Journal(database).forEachRow([&](const JournalRow &row) {
        if (row.changeset)
            forEachChange(*row.changeset,
                          [&](const ChangedRow &change) { addFiles(change, names); });
    });
    return names;
}

} // namespace lastrivet::storage
