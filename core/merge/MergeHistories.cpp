// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/MergeHistories.h"

#include "core/base/Error.h"
#include "core/merge/Replay.h"
#include "core/merge/Rewind.h"

#include <fmt/format.h>

#include <chrono>

namespace lastrivet::merge {

namespace {

/// The first time that no moment can hold. A row of such a time would push all that is written
/// after it out of every calendar.
constexpr std::int64_t beyondTime =
    std::chrono::sys_time<std::chrono::milliseconds>(
        std::chrono::sys_days{std::chrono::year{2200} / std::chrono::January / 1})
        .time_since_epoch()
        .count();

/// Why a row cannot stand behind the one before it; null when it can. `before` is null for the
/// first.
const char *whyBroken(const storage::JournalRow &row, const storage::JournalRow *before)
{
    if (!storage::fitsItsHash(row))
        return "was altered";
    if (row.previous_hash != (before ? before->hash : storage::Blob(32, 0)))
        return "does not follow the row before it";
    // Without the sum, which the last of all numbers would not bear.
    if (row.seq < 1 || row.seq - 1 != (before ? before->seq : 0))
        return "is out of sequence";
    return row.stamp < beyondTime ? nullptr : "is of a time after the year 2199";
}

/// What another copy says is taken over for good, so a journal that does not hold is not.
void requireUnbroken(const History &other)
{
    const storage::JournalRow *before = nullptr;
    for (const auto &row : other) {
        if (const char *why = whyBroken(row, before))
            throw UnreadableInput(fmt::format("The other copy's journal is broken, so nothing was "
                                              "merged: its row {} (“{}”) {}.",
                                              row.seq, row.label, why));
        before = &row;
    }
}

} // namespace

MergedHistories mergeHistories(MergeState mine, const History &myRows, const History &otherRows)
{
    const auto common = commonRows(myRows, otherRows);
    if (common == 0)
        throw UnreadableInput("The two are not copies of one project: they have no beginning in "
                              "common.");
    requireUnbroken(otherRows);
    auto carried = newTo(myRows, otherRows);
    if (carried.empty())
        return {std::move(mine), {}, {}};
    const auto kept = rowsToKeep(common, myRows, otherRows);
    auto touched = rewind(mine, std::span(myRows).subspan(kept));
    Replay replay(std::move(mine));
    for (const auto *row : unionBeyond(kept, myRows, otherRows))
        replay.play(*row);
    touched.insert(replay.touched().begin(), replay.touched().end());
    return {replay.state(), std::move(touched), std::move(carried)};
}

} // namespace lastrivet::merge
