// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/MergeHistories.h"

#include "core/base/Error.h"
#include "core/merge/ChangeContent.h"
#include "core/base/Tongue.h"
#include "core/merge/Replay.h"
#include "core/merge/Rewind.h"
#include "core/storage/RecordRows.h"

#include <cstddef>
#include <set>
#include <string>
#include <string_view>
#include <utility>

namespace lastrivet::merge {

namespace {

using Sums = std::set<std::string>;

/// Adds the pictures and papers that the change put on record, unless they are there already.
void addMedia(Records &records, Sums &known, const storage::JournalRow &change)
{
    const ChangeContent content = contentOf(*change.changeset);
    for (const RecordEdits &edits : content.records) {
        const RowEdit *own = edits.own();
        if (edits.record.type != RecordType::Media || !own || own->kind != RowChange::Insert ||
            records.find(edits.record.type, edits.record.id))
            continue;
        storage::RecordRows rows(records, edits.record);
        storage::Row row(own->table->columns().size());
        for (std::size_t i = 0; i < own->after.size(); ++i)
            row[i] = own->after[i].value_or(storage::Cell{});
        rows.main = std::move(row);
        const auto made = rows.record();
        const auto &media = *static_cast<const Media *>(made.get());
        if (media.sha256.empty() || known.insert(media.sha256).second)
            records.put(RecordType::Media, &media);
    }
}

Records withLeftOut(const MergeState &state, const std::vector<const storage::JournalRow *> &played)
{
    std::set<std::string_view> leftOut;
    for (const auto &[id, conflict] : state.conflicts) {
        if (conflict.kind == ConflictKind::SetAside && !conflict.decision)
            leftOut.insert(conflict.lost_by);
    }
    Records records = state.records;
    if (leftOut.empty())
        return records;
    Sums known;
    for (const Media &media : state.records.media)
        known.insert(media.sha256);
    for (const auto *row : played) {
        if (row->changeset && leftOut.contains(row->change_id))
            addMedia(records, known, *row);
    }
    return records;
}

} // namespace

MergedHistories mergeHistories(MergeState mine, const History &myRows, const History &otherRows)
{
    const auto common = commonRows(myRows, otherRows);
    if (common == 0)
        throw UnreadableInput("The two are not copies of one project: they have no beginning in "
                              "common.");
    // What the other says is taken over for good.
    if (const auto broken = storage::firstBreak(otherRows))
        throw UnreadableInput(Message{
            "The other copy's journal is broken, so nothing was merged: {0}.", {nested(*broken)}});
    auto carried = newTo(myRows, otherRows);
    if (carried.empty())
        return {std::move(mine), {}, {}, {}};
    const auto kept = rowsToKeep(common, myRows, otherRows);
    auto touched = rewind(mine, std::span(myRows).subspan(kept));
    Replay replay(std::move(mine));
    const auto played = unionBeyond(kept, myRows, otherRows);
    for (const auto *row : played)
        replay.play(*row);
    touched.insert(replay.touched().begin(), replay.touched().end());
    return {replay.state(), std::move(touched), std::move(carried),
            withLeftOut(replay.state(), played)};
}

} // namespace lastrivet::merge
