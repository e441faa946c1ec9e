// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/FilesNamed.h"

#include "core/records/OwnFileName.h"
#include "core/storage/Changeset.h"
#include "core/storage/Journal.h"

#include <SQLiteCpp/Statement.h>

#include <cstdint>
#include <filesystem>
#include <variant>

namespace lastrivet::storage {

namespace {

void addFiles(const ChangedRow &change, std::set<std::string> &names)
{
    if (change.table != word(RecordType::Media))
        return;
    const auto file = columnOf(*change.recordTable, "file");
    for (const auto *cells : {&change.before, &change.after}) {
        if (const auto *name = textIn(*cells, file))
            names.insert(fileName(*name));
    }
    const auto *name = textIn(change.after, file);
    const auto *id = name ? std::get_if<std::int64_t>(&*change.key(0)) : nullptr;
    if (change.kind != RowChange::Insert || !id)
        return;
    const auto *sum = textIn(change.after, columnOf(*change.recordTable, "sha256"));
    names.insert(fileName(ownFileName(*name, sum ? *sum : std::string(), *id)));
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
