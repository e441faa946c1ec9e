// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/Rewind.h"

#include "core/base/Error.h"
#include "core/merge/ChangeContent.h"
#include "core/storage/RecordRows.h"

#include <algorithm>

namespace lastrivet::merge {

namespace {

using storage::Row;

struct DoesNotFit {};

/// The row as an edit leaves it; nothing when it is gone. `row` must be as the edit found it.
std::optional<Row> edited(const std::optional<Row> &row, const RowEdit &edit, std::size_t columns)
{
    if (row.has_value() == (edit.kind == RowChange::Insert))
        throw DoesNotFit{};
    for (std::size_t i = 0; row && i < edit.before.size(); ++i) {
        if (edit.before[i] && *edit.before[i] != (*row)[i])
            throw DoesNotFit{};
    }
    if (edit.kind == RowChange::Delete)
        return std::nullopt;
    Row after = row ? *row : Row(columns);
    for (std::size_t i = 0; i < edit.after.size(); ++i) {
        if (edit.after[i])
            after[i] = *edit.after[i];
    }
    return after;
}

void editRow(storage::RecordRows &rows, const RowEdit &edit)
{
    const auto columns = edit.table->columns().size();
    if (!edit.isOfList()) {
        rows.main = edited(rows.main, edit, columns);
        return;
    }
    auto &list = rows.rowsOf(*edit.table);
    const auto found = list.find(edit.key(1));
    const auto row = found == list.end() ? std::nullopt : std::optional(found->second);
    if (auto after = edited(row, edit, columns))
        list.insert_or_assign(edit.key(1), std::move(*after));
    else
        list.erase(found);
}

void editRecord(Records &records, const RecordEdits &edits)
{
    storage::RecordRows rows(records, edits.record);
    for (const auto &edit : edits.rows)
        editRow(rows, edit);
    rows.putInto(records);
}

void editProfile(Records &records, const RowEdit &edit)
{
    const auto after = edited(Row{std::int64_t{1}, records.profile_copy}, edit, 2);
    records.profile_copy = after ? std::get<std::string>((*after)[1]) : std::string();
}

void editConflict(storage::ConflictRows &conflicts, const RowEdit &edit)
{
    const auto found = conflicts.find(std::get<std::int64_t>(edit.key(0)));
    const auto row =
        found == conflicts.end() ? std::nullopt : std::optional(storage::rowOf(found->second));
    if (const auto after = edited(row, edit, storage::conflictColumnCount)) {
        auto conflict = storage::conflictOf(*after);
        const auto id = conflict.id;
        conflicts.insert_or_assign(id, std::move(conflict));
    } else {
        conflicts.erase(found);
    }
}

} // namespace

std::optional<RecordRef> applyExactly(MergeState &state, const ChangeContent &content)
{
    RecordRef at;
    try {
        for (const auto &edits : content.records) {
            at = edits.record;
            editRecord(state.records, edits);
        }
        // What belongs to no record counts as the project's.
        at = {RecordType::Project, 1};
        if (content.profile)
            editProfile(state.records, *content.profile);
        for (const auto &edit : content.conflicts)
            editConflict(state.conflicts, edit);
    } catch (const DoesNotFit &) {
        return at;
    }
    return std::nullopt;
}

std::set<RecordRef> rewind(MergeState &state, std::span<const storage::JournalRow> rows)
{
    std::set<RecordRef> touched;
    for (auto row = rows.rbegin(); row != rows.rend(); ++row) {
        // A carried row has its effect in the merge that brought it.
        if (!row->changeset || row->kind == word(ChangeKind::Carried))
            continue;
        const auto content = contentOf(storage::inverted(*row->changeset));
        if (applyExactly(state, content)) {
            throw UnreadableInput(Message{"Row {0} of the journal (“{1}”) does not fit the "
                                          "records; verify the project before merging.",
                                          {std::to_string(row->seq), row->label}});
        }
        for (const auto &edits : content.records)
            touched.insert(edits.record);
    }
    return touched;
}

} // namespace lastrivet::merge
