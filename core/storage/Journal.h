// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Sha256.h"
#include "core/project/JournalEntry.h"
#include "core/storage/Cell.h"
#include "core/storage/Database.h"
#include "core/storage/StatementUse.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet::storage {

/// A row of the journal, all of it, as it is stored.
struct JournalRow {
    std::int64_t seq = 0;
    std::string change_id;
    std::int64_t stamp = 0;
    std::string kind;
    std::optional<std::string> undoes;
    std::optional<std::string> who;
    std::string label;
    std::int64_t schema = 0;
    std::optional<Blob> changeset;
    std::optional<Blob> origin_hash;
    Blob previous_hash;
    Blob hash;
};

/// The SHA-256 over all columns of a row but its own hash, in order: each as `<decimal byte
/// length>:<bytes>,`, whole numbers in decimal, null as `-,`.
Sha256::Digest hashOf(const JournalRow &row);
/// Whether the row still says what it said when its hash was made.
bool fitsItsHash(const JournalRow &row);

/// The first time that may stand behind the row `seq` with this time. Throws `UnreadableInput` when
/// there is none, which no clock brings about.
std::int64_t stampAfter(std::int64_t seq, std::int64_t stamp);

/// What is wrong with the oldest row that was altered, does not follow the one before it, or has an
/// impossible time; the end of a sentence. Empty when the journal is whole.
std::optional<Message> firstBreak(const std::vector<JournalRow> &rows);

/// What a new row says; the journal adds place, time and hashes.
struct NewChange {
    ChangeKind kind = ChangeKind::Change;
    std::string label;
    /// The change_id that is taken back; empty for none.
    std::string undoes;
    /// Empty when it is not known.
    std::string who;
    /// Empty for a row that changes no record.
    Blob changeset;
    /// A time that the row must not be before: rows that a merge carried over, and that stand just
    /// before it, may be older than rows further back.
    std::int64_t notBefore = 0;
    /// Empty to have one made at random.
    std::string change_id = {};
};

/// The append-only list of changes in the database, each row chained to the one before.
class Journal {
public:
    /// `database` outlives it.
    explicit Journal(Database &database);

    /// Adds a row, inside the caller's transaction. `now` in ms since 1970, UTC.
    JournalEntry append(const NewChange &change, std::int64_t now);
    /// Adds another copy's row as carried: its id, time, person and label stay, and its hash is
    /// kept beside the new one.
    void carry(const JournalRow &row);
    std::optional<JournalLine> newest() const;
    /// 64 hex digits; empty for a journal without rows.
    std::string newestHash() const;
    /// The same of the oldest row, by which two projects are known to be copies of one.
    std::string oldestHash() const;
    /// All rows, oldest first. Quicker than `entries`: the hashes of a row are stored behind its
    /// changeset, and SQLite has to read all of that to reach them.
    std::vector<JournalLine> lines() const;
    /// Those behind the row `after`, oldest first.
    std::vector<JournalEntry> entries(std::int64_t after = 0) const;
    /// Empty for a row without changes, or no such row.
    Blob changeset(std::int64_t seq) const;
    void forEachRow(const std::function<void(const JournalRow &)> &each) const;
    std::vector<JournalRow> rows() const;
    /// Nothing when there is no such change.
    std::optional<JournalRow> rowOf(const std::string &changeId) const;

private:
    /// Gives the row its place in the chain and its hash.
    JournalEntry chain(JournalRow row);
    JournalEntry insert(const JournalRow &row);
    std::int64_t schema();

    Database &m_database;
    mutable KeptStatement m_newest;
    KeptStatement m_schema;
    KeptStatement m_last;
    KeptStatement m_insert;
};

} // namespace lastrivet::storage
