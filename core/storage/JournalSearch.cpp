// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/JournalSearch.h"

#include "core/storage/Changeset.h"

#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <span>
#include <string_view>

namespace lastrivet::storage {

namespace {

/// A changeset contains the names of its tables, which begin with the name of the record type: a
/// search for that rules out most rows without decoding them.
bool namesAny(std::span<const std::uint8_t> bytes, const std::set<std::string_view> &tables)
{
    const std::string_view text(reinterpret_cast<const char *>(bytes.data()), bytes.size());
    return std::ranges::any_of(tables, [&](std::string_view table) {
        return text.find(table) != std::string_view::npos ||
               (table == word(RecordType::Project) && text.find(profileTable) != text.npos);
    });
}

bool isAnyOf(const std::vector<RecordRef> &touched, const std::set<RecordRef> &wanted)
{
    return std::ranges::any_of(touched, [&](RecordRef each) { return wanted.contains(each); });
}

} // namespace

std::vector<std::int64_t> rowsTouching(const Database &database, const std::set<RecordRef> &records)
{
    std::set<std::string_view> types;
    for (const RecordRef record : records)
        types.insert(word(record.type));
    std::vector<std::int64_t> rows;
    SQLite::Statement row(database.sql(), R"(SELECT "seq","changeset" FROM "journal"
                                             WHERE "changeset" IS NOT NULL ORDER BY "seq")");
    while (row.executeStep()) {
        const SQLite::Column column = row.getColumn(1);
        const std::span bytes(static_cast<const std::uint8_t *>(column.getBlob()),
                              std::size_t(column.getBytes()));
        if (namesAny(bytes, types) && isAnyOf(touchedBy(bytes), records))
            rows.push_back(row.getColumn(0).getInt64());
    }
    return rows;
}

} // namespace lastrivet::storage
