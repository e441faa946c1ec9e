// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Words.h"
#include "core/records/RecordType.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet {

/// What a row of the journal stands for.
enum class ChangeKind {
    Change,
    Automatic, ///< by the program itself, as the watched folder's photographs
    Undo,
    Redo,
    Import,
    Merge,     ///< the difference that a merge made here
    Carried,   ///< a change of another copy, brought in by a merge
    Migration, ///< a step of the schema; the first row, which begins the project
    Printed,   ///< a document was made; no record changed
};
template <> struct Words<ChangeKind> {
    static constexpr std::array<std::string_view, 9> list{"change",  "automatic", "undo",
                                                          "redo",    "import",    "merge",
                                                          "carried", "migration", "printed"};
};

/// Whether `Project::reverse` may take back what a row of this kind changed.
constexpr bool canBeReversed(ChangeKind kind)
{
    return kind == ChangeKind::Change || kind == ChangeKind::Automatic ||
           kind == ChangeKind::Import || kind == ChangeKind::Redo || kind == ChangeKind::Carried;
}

/// How the label of every import begins. A merge carries rows over without their kind, so this is
/// how a carried import is recognised.
inline constexpr std::string_view importLabel = "Imported ";

/// One row of the journal, without its changeset and its hashes.
struct JournalLine {
    std::int64_t seq = 0;
    std::string change_id;
    /// Milliseconds since 1970 in UTC, strictly rising.
    std::int64_t stamp = 0;
    ChangeKind kind = ChangeKind::Change;
    /// The change_id of the row that this one undoes, redoes, or takes back by a change of its own;
    /// empty for other rows.
    std::string undoes;
    std::string who;
    std::string label;
    /// The version of the schema that the changeset was recorded under.
    std::int64_t schema = 0;
};

/// One row of the journal, without its changeset.
struct JournalEntry : JournalLine {
    std::string hash;          ///< 64 hex digits
    std::string previous_hash; ///< 64 hex digits
    /// Of a carried row, its hash in the copy that made the change; else empty.
    std::string origin_hash;
};

enum class RowChange { Insert, Update, Delete };
template <> struct Words<RowChange> {
    static constexpr std::array<std::string_view, 3> list{"insert", "update", "delete"};
};

/// How one field of a record changed. Values are JSON texts; of sets and lists, `added` and
/// `removed` hold the items, and `from` and `to` are empty.
struct FieldChange {
    std::string name;
    std::optional<std::string> from;
    std::optional<std::string> to;
    std::vector<std::string> added;
    std::vector<std::string> removed;
};

/// How a journal row changed one record.
struct JournalChange {
    RecordRef record;
    RowChange kind = RowChange::Update;
    std::vector<FieldChange> fields;
};

/// How a journal row changed some of its records.
struct SomeChanges {
    std::vector<JournalChange> changes;
    std::size_t others = 0; ///< how many records more the row changed
};

} // namespace lastrivet
