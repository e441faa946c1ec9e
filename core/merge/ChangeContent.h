// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/Changeset.h"

#include <optional>
#include <span>
#include <vector>

namespace lastrivet::merge {

/// One changed row of a changeset that outlives it.
struct RowEdit {
    /// Null for a row of no record.
    const storage::RecordTable *table = nullptr;
    RowChange kind = RowChange::Update;
    /// Of an update: the key and what changed, nothing else.
    std::vector<std::optional<storage::Cell>> before;
    std::vector<std::optional<storage::Cell>> after;

    bool isOfList() const { return table && table->collection(); }
    const storage::Cell &key(std::size_t column) const
    {
        return *(kind == RowChange::Insert ? after : before)[column];
    }
};

/// What a change does to one record.
struct RecordEdits {
    RecordRef record;
    /// The record's own row first; then by table, of one table updates, insertions, deletions.
    std::vector<RowEdit> rows;

    /// What happens to the record's own row; null when only its sets and lists change.
    const RowEdit *own() const;
    bool takesBack() const { return own() && own()->kind == RowChange::Delete; }
};

/// A changeset, record by record.
struct ChangeContent {
    std::vector<RecordEdits> records;
    std::optional<RowEdit> profile;
    /// Rows of the table of what merges left to decide.
    std::vector<RowEdit> conflicts;
};

/// Throws `UnreadableInput` when the bytes are no changeset of ours.
ChangeContent contentOf(std::span<const std::uint8_t> changeset);

} // namespace lastrivet::merge
