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

[[noreturn]] void refuse()
{
    throw UnreadableInput("The journal is damaged: a row's changes cannot be read.");
}

/// Whether a cell of the key is of the kind that its column has.
bool isKey(const RecordTable::Column &column, const storage::Cell &cell)
{
    return column.field ? !isNull(storage::scalarOf(*column.field, cell))
                        : std::holds_alternative<std::int64_t>(cell);
}

void requireKey(const RowEdit &row)
{
    const auto &cells = row.kind == RowChange::Insert ? row.after : row.before;
    for (std::size_t i = 0; i < row.table->keyColumns(); ++i) {
        if (i >= cells.size() || !cells[i] || !isKey(row.table->columns()[i], *cells[i]))
            refuse();
    }
}

/// Of the profile's only row there is a text wherever it is told what it was or became.
void requireText(const RowEdit &profile)
{
    for (const auto *cells : {&profile.before, &profile.after}) {
        const bool isText =
            cells->size() > 1 && (*cells)[1] && std::holds_alternative<std::string>(*(*cells)[1]);
        if (!cells->empty() && !isText)
            refuse();
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
        if (edit.table) {
            requireKey(edit);
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
            requireText(edit);
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
