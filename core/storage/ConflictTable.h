// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/MergeConflict.h"
#include "core/storage/Cell.h"

#include <SQLiteCpp/Database.h>

#include <map>
#include <optional>
#include <string>

namespace lastrivet::storage {

/// A row of the table of what merges could not settle.
struct ConflictRow {
    std::int64_t id = 0;
    ConflictKind kind = ConflictKind::Value;
    RecordRef record{RecordType::Project, 1};
    /// Empty when it is about the whole record.
    std::string field;
    /// The position in a list, or the person among workers.
    std::optional<std::int64_t> item;
    Cell kept;
    Cell lost;
    /// The change_ids of the changes that won and lost.
    std::string kept_by;
    std::string lost_by;
    /// Why a change was left out, in English.
    std::string reason;
    std::optional<ConflictDecision> decision;

    friend bool operator==(const ConflictRow &, const ConflictRow &) = default;
};
using ConflictRows = std::map<std::int64_t, ConflictRow>;

inline constexpr std::string_view conflictTable = "merge_conflict";
/// Of the table, in order.
inline constexpr std::string_view conflictColumns =
    R"("id","kind","record","record_id","field","item","kept","lost","kept_by","lost_by","reason","decision")";
inline constexpr std::size_t conflictColumnCount = 12;

Row rowOf(const ConflictRow &conflict);
/// Throws `UnreadableInput` for a row that no program of ours can have written.
ConflictRow conflictOf(const Row &row);

ConflictRows readConflicts(const SQLite::Database &database);
/// Inserts the row, or replaces the one with its id.
void writeConflict(const SQLite::Database &database, const ConflictRow &conflict);
void eraseConflict(const SQLite::Database &database, std::int64_t id);

} // namespace lastrivet::storage
