// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/ConflictTable.h"

#include "core/base/Error.h"

#include <SQLiteCpp/Statement.h>

#include <fmt/format.h>

namespace lastrivet::storage {

namespace {

Cell cellOfText(const std::string &text)
{
    return text.empty() ? Cell{} : Cell{text};
}

std::string textOf(const Cell &cell)
{
    const auto *text = std::get_if<std::string>(&cell);
    return text ? *text : std::string();
}

[[noreturn]] void refuse()
{
    throw UnreadableInput("The table of what merges left to decide is damaged.");
}

std::int64_t numberOf(const Cell &cell)
{
    const auto *number = std::get_if<std::int64_t>(&cell);
    if (!number)
        refuse();
    return *number;
}

template <class Word> Word wordOf(const Cell &cell)
{
    const auto given = parseWord<Word>(textOf(cell));
    if (!given)
        refuse();
    return *given;
}

} // namespace

Row rowOf(const ConflictRow &conflict)
{
    return {conflict.id,
            std::string(word(conflict.kind)),
            std::string(word(conflict.record.type)),
            conflict.record.id,
            cellOfText(conflict.field),
            conflict.item ? Cell{*conflict.item} : Cell{},
            conflict.kept,
            conflict.lost,
            cellOfText(conflict.kept_by),
            cellOfText(conflict.lost_by),
            cellOfText(conflict.reason),
            conflict.decision ? Cell{std::string(word(*conflict.decision))} : Cell{}};
}

ConflictRow conflictOf(const Row &row)
{
    if (row.size() != conflictColumnCount)
        refuse();
    ConflictRow conflict;
    conflict.id = numberOf(row[0]);
    conflict.kind = wordOf<ConflictKind>(row[1]);
    conflict.record = {wordOf<RecordType>(row[2]), numberOf(row[3])};
    conflict.field = textOf(row[4]);
    if (row[5].index() != 0)
        conflict.item = numberOf(row[5]);
    conflict.kept = row[6];
    conflict.lost = row[7];
    conflict.kept_by = textOf(row[8]);
    conflict.lost_by = textOf(row[9]);
    conflict.reason = textOf(row[10]);
    if (row[11].index() != 0)
        conflict.decision = wordOf<ConflictDecision>(row[11]);
    return conflict;
}

ConflictRows readConflicts(const SQLite::Database &database)
{
    ConflictRows conflicts;
    SQLite::Statement rows(database,
                           fmt::format(R"(SELECT {} FROM "{}")", conflictColumns, conflictTable));
    while (rows.executeStep()) {
        Row row;
        for (int i = 0; i < rows.getColumnCount(); ++i)
            row.push_back(cellOf(rows.getColumn(i)));
        auto conflict = conflictOf(row);
        const auto id = conflict.id;
        conflicts.emplace(id, std::move(conflict));
    }
    return conflicts;
}

void writeConflict(const SQLite::Database &database, const ConflictRow &conflict)
{
    SQLite::Statement statement(
        database,
        fmt::format(R"(INSERT INTO "{}" ({}) VALUES (?1,?2,?3,?4,?5,?6,?7,?8,?9,?10,?11,?12)
                       ON CONFLICT ("id") DO UPDATE SET "kind"=?2,"record"=?3,"record_id"=?4,
                       "field"=?5,"item"=?6,"kept"=?7,"lost"=?8,"kept_by"=?9,"lost_by"=?10,
                       "reason"=?11,"decision"=?12)",
                    conflictTable, conflictColumns));
    const auto row = rowOf(conflict);
    for (std::size_t i = 0; i < row.size(); ++i)
        bind(statement, int(i) + 1, row[i]);
    statement.exec();
}

void eraseConflict(const SQLite::Database &database, std::int64_t id)
{
    SQLite::Statement statement(database,
                                fmt::format(R"(DELETE FROM "{}" WHERE "id"=?)", conflictTable));
    statement.bind(1, id);
    statement.exec();
}

} // namespace lastrivet::storage
