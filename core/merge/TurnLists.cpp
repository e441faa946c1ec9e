// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/Turn.h"

#include <algorithm>

namespace lastrivet::merge {

namespace {

using storage::Cell;
using storage::RecordRows;
using storage::Row;

/// Whether a row has all that an edit expects of it, from `first` on.
bool isExpected(const RowEdit &edit, const Row &row, std::size_t first)
{
    for (std::size_t i = first; i < edit.before.size(); ++i) {
        if (edit.before[i] && *edit.before[i] != row[i])
            return false;
    }
    return true;
}

bool saysTheSame(const RowEdit &edit, const Row &row, std::size_t first)
{
    for (std::size_t i = first; i < edit.after.size(); ++i) {
        if (edit.after[i].value_or(Cell{}) != row[i])
            return false;
    }
    return true;
}

Row rowOf(const RowEdit &edit)
{
    Row row(edit.table->columns().size());
    for (std::size_t i = 0; i < row.size(); ++i) {
        if (i < edit.after.size() && edit.after[i])
            row[i] = *edit.after[i];
        else if (i < edit.before.size() && edit.before[i])
            row[i] = *edit.before[i];
    }
    return row;
}

/// What an edit makes of a row that is gone from the list: who changed one thing of it did not mean
/// the rest to go.
Row rowAgain(const RowEdit &edit, const Row &was)
{
    Row row = was;
    for (std::size_t i = 2; i < edit.after.size(); ++i)
        row[i] = edit.after[i].value_or(row[i]);
    return row;
}

/// The row that the edit means: where it was, or where the other copy's changes moved it.
RecordRows::Collection::iterator meantBy(const RowEdit &edit, RecordRows::Collection &rows)
{
    const auto at = rows.find(edit.key(1));
    if (at != rows.end() && isExpected(edit, at->second, 2))
        return at;
    return std::find_if(rows.begin(), rows.end(),
                        [&](const auto &entry) { return isExpected(edit, entry.second, 2); });
}

/// Positions count from 0 without gaps.
void closeGaps(RecordRows::Collection &rows)
{
    RecordRows::Collection counted;
    for (auto &[key, row] : rows) {
        const Cell position = std::int64_t(counted.size());
        row[1] = position;
        counted.emplace(position, std::move(row));
    }
    rows = std::move(counted);
}

} // namespace

void Turn::changeList(RecordRows &rows, const RowEdit &edit)
{
    if (!edit.table->collection()->rows)
        changeSet(rows.rowsOf(*edit.table), edit);
    else if (edit.table->columns()[1].field)
        changeKeyed(rows, edit);
    else
        changeSequence(rows, edit);
}

void Turn::changeSet(RecordRows::Collection &set, const RowEdit &edit)
{
    if (edit.kind == RowChange::Delete)
        set.erase(edit.key(1));
    else
        set.try_emplace(edit.key(1), rowOf(edit));
}

void Turn::changeKeyed(RecordRows &rows, const RowEdit &edit)
{
    auto &list = rows.rowsOf(*edit.table);
    const auto at = list.find(edit.key(1));
    const RowOfList item{{rows.ref, std::string(edit.table->name())}, edit.key(1)};
    if (edit.kind == RowChange::Delete) {
        // A row that the other copy went on with stays.
        if (at != list.end() && isExpected(edit, at->second, 2)) {
            later(
                [this, item, row = at->second] { m_memory.takenOut.insert_or_assign(item, row); });
            list.erase(at);
        }
        return;
    }
    if (at == list.end()) {
        const auto was = m_memory.takenOut.find(item);
        const bool isAgain = edit.kind == RowChange::Update && was != m_memory.takenOut.end();
        auto row = isAgain ? rowAgain(edit, was->second) : rowOf(edit);
        row[0] = rows.ref.id;
        list.emplace(edit.key(1), std::move(row));
        return;
    }
    for (std::size_t i = 2; i < edit.after.size(); ++i) {
        if (!edit.after[i])
            continue;
        const auto field =
            std::string(edit.table->collection()->name) + "." + edit.table->columns()[i].name;
        give(rows.ref, field, std::get<std::int64_t>(edit.key(1)), at->second[i],
             edit.kind == RowChange::Insert ? std::nullopt : edit.before[i], *edit.after[i]);
    }
}

void Turn::changeSequence(RecordRows &rows, const RowEdit &edit)
{
    auto &list = rows.rowsOf(*edit.table);
    const auto same = [&](const auto &entry) { return saysTheSame(edit, entry.second, 2); };
    const auto at = list.find(edit.key(1));
    if (edit.kind == RowChange::Insert) {
        const Cell place = std::int64_t(list.size());
        // Links are facts, told once; of other lists two rows may say the same. What goes right
        // behind the last was added by somebody who saw the others.
        const bool isLinks = edit.table->name() == "media_links" && edit.key(1) != place;
        if (isLinks ? std::any_of(list.begin(), list.end(), same) : at != list.end() && same(*at))
            return;
        auto row = rowOf(edit);
        row[0] = rows.ref.id;
        list.emplace(at == list.end() ? edit.key(1) : place, std::move(row));
    } else if (const auto meant = meantBy(edit, list); edit.kind == RowChange::Delete) {
        if (meant != list.end())
            list.erase(meant);
    } else if (const auto row = meant != list.end() ? meant : at; row != list.end()) {
        for (std::size_t i = 2; i < edit.after.size(); ++i) {
            if (edit.after[i])
                give(rows.ref,
                     std::string(edit.table->collection()->name) + "." +
                         edit.table->columns()[i].name,
                     std::get<std::int64_t>(row->first), row->second[i], edit.before[i],
                     *edit.after[i]);
        }
    } else {
        addConflict({.kind = ConflictKind::Value,
                     .record = rows.ref,
                     .field = std::string(edit.table->collection()->name),
                     .item = std::get<std::int64_t>(edit.key(1)),
                     .lost_by = m_change});
    }
    closeGaps(list);
}

} // namespace lastrivet::merge
