// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/JournalEntry.h"
#include "core/storage/Database.h"
#include "core/storage/RecordTable.h"

#include <functional>
#include <memory>
#include <optional>
#include <set>
#include <span>
#include <string>

struct sqlite3_session;

namespace lastrivet::storage {

/// Records all changes to the record tables from its construction on.
class ChangeRecording {
public:
    /// `database` outlives it.
    explicit ChangeRecording(Database &database);

    /// The net change so far, empty when there is none.
    Blob changeset();

private:
    struct Delete {
        void operator()(sqlite3_session *session) const;
    };

    std::unique_ptr<sqlite3_session, Delete> m_session;
};

/// One changed row of a changeset. For an update, only the cells of the key and of what changed are
/// set.
struct ChangedRow {
    std::string_view table;
    /// Null for the copy of the rule profile, and for what a merge left to decide.
    const RecordTable *recordTable;
    RowChange kind;
    std::vector<std::optional<Cell>> before;
    std::vector<std::optional<Cell>> after;

    /// A cell of the key, which an update has in `before`.
    const std::optional<Cell> &key(std::size_t column) const
    {
        return kind == RowChange::Insert ? after[column] : before[column];
    }
};

/// The text in a column of a changed row; null when the row has no such cell, or no text there.
const std::string *textIn(const std::vector<std::optional<Cell>> &cells, std::size_t column);

/// The record that the row belongs to; the project for a row that belongs to none.
RecordRef recordOf(const ChangedRow &row);

/// Calls `each` for every row; throws `UnreadableInput` when the bytes are no changeset of ours.
void forEachChange(std::span<const std::uint8_t> changeset,
                   const std::function<void(const ChangedRow &)> &each);
/// The same with the cells of the keys only, which is much quicker.
void forEachKey(std::span<const std::uint8_t> changeset,
                const std::function<void(const ChangedRow &)> &each);
/// The same for rows of these records only; of the others it reads no more than the key.
void forEachChangeOf(std::span<const std::uint8_t> changeset, const std::set<RecordRef> &records,
                     const std::function<void(const ChangedRow &)> &each);

/// The records that a changeset touches, each once, in order.
std::vector<RecordRef> touchedBy(std::span<const std::uint8_t> changeset);

Blob inverted(std::span<const std::uint8_t> changeset);

/// A row that is not as a changeset expects it.
struct Conflict {
    std::string table;
    RecordRef record;
};

struct Applied {
    /// The row that was not as expected; then nothing was applied.
    std::optional<Conflict> conflict;
    /// All of it was applied, but rows are left that refer to what it removed. SQLite does not
    /// count them as violations afterwards and COMMIT would succeed: the caller has to roll back.
    bool leavesDangling = false;
};

/// Applies all of it, or nothing. Throws when the tables have other keys or fewer columns than
/// those that were recorded.
Applied apply(Database &database, std::span<const std::uint8_t> changeset);

} // namespace lastrivet::storage
