// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/ChangeContent.h"

#include "core/base/Error.h"
#include "core/storage/ConflictTable.h"

#include <algorithm>
#include <array>
#include <map>
#include <tuple>

namespace lastrivet::merge {

namespace {

using storage::RecordTable;

void requireWhole(const RowEdit &row, std::size_t keyColumns)
{
    const auto &keys = row.kind == RowChange::Insert ? row.after : row.before;
    for (std::size_t i = 0; i < keyColumns; ++i) {
        if (i >= keys.size() || !keys[i])
            throw UnreadableInput("The journal is damaged: a row's changes cannot be read.");
    }
}

/// A null means the field's default, which is what records that were read say in its place.
void nameDefaults(const RecordTable &table, std::vector<std::optional<storage::Cell>> &cells)
{
    const auto defaults = table.rowsOf(table.record().defaults).front();
    for (std::size_t i = table.keyColumns(); i < cells.size(); ++i) {
        if (cells[i] && cells[i]->index() == 0)
            cells[i] = defaults[i];
    }
}

/// Updates, insertions, deletions; deletions from the end of a list backwards.
bool comesFirst(const RowEdit &a, const RowEdit &b)
{
    constexpr std::array<int, 3> place{1, 0, 2};
    const auto rank = [&](const RowEdit &row) {
        return std::tuple(row.table, place[std::size_t(row.kind)]);
    };
    if (rank(a) != rank(b) || !a.isOfList())
        return rank(a) < rank(b);
    return a.kind == RowChange::Delete ? b.key(1) < a.key(1) : a.key(1) < b.key(1);
}

} // namespace

const RowEdit *RecordEdits::own() const
{
    return !rows.empty() && !rows.front().isOfList() ? &rows.front() : nullptr;
}

ChangeContent contentOf(std::span<const std::uint8_t> changeset)
{
    ChangeContent content;
    std::map<RecordRef, RecordEdits> records;
    storage::forEachChange(changeset, [&](const storage::ChangedRow &row) {
        RowEdit edit{row.recordTable, row.kind, row.before, row.after};
        requireWhole(edit, edit.table ? edit.table->keyColumns() : 1);
        if (edit.table) {
            if (!edit.isOfList()) {
                nameDefaults(*edit.table, edit.before);
                nameDefaults(*edit.table, edit.after);
            }
            const auto ref = storage::recordOf(row);
            auto &edits = records.try_emplace(ref, RecordEdits{ref, {}}).first->second;
            edits.rows.push_back(std::move(edit));
        } else if (row.table == storage::conflictTable) {
            content.conflicts.push_back(std::move(edit));
        } else {
            content.profile = std::move(edit);
        }
    });
    for (auto &[ref, edits] : records) {
        std::sort(edits.rows.begin(), edits.rows.end(), comesFirst);
        content.records.push_back(std::move(edits));
    }
    return content;
}

} // namespace lastrivet::merge
