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

/// Watches the record tables from its making on, and says what came of it.
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

/// One changed row of a changeset. Of an update it holds the key and what changed, nothing else.
struct ChangedRow {
    std::string_view table;
    /// Null for the copy of the rule profile, and for what a merge left to decide.
    const RecordTable *recordTable;
    RowChange kind;
    std::vector<std::optional<Cell>> before;
    std::vector<std::optional<Cell>> after;

    /// The key's cells; of an update, the `before` has them.
    const std::optional<Cell> &key(std::size_t column) const
    {
        return kind == RowChange::Insert ? after[column] : before[column];
    }
};

/// The record that the row belongs to; what belongs to none counts as the project's.
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
    /// Where it did not fit; then nothing of it was applied.
    std::optional<Conflict> conflict;
    /// All of it was, and rows are left that name what it took away. SQLite takes that for settled,
    /// so that no COMMIT refuses it any more: whoever applied it must.
    bool leavesDangling = false;
};

/// Applies all of it, or nothing. Throws when the tables have other keys or fewer columns than
/// those that were recorded.
Applied apply(Database &database, std::span<const std::uint8_t> changeset);

} // namespace lastrivet::storage
