// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/MergeHistories.h"

#include "core/base/Error.h"
#include "core/merge/Replay.h"
#include "core/merge/Rewind.h"

#include <fmt/format.h>

namespace lastrivet::merge {

MergedHistories mergeHistories(MergeState mine, const History &myRows, const History &otherRows)
{
    const auto common = commonRows(myRows, otherRows);
    if (common == 0)
        throw UnreadableInput("The two are not copies of one project: they have no beginning in "
                              "common.");
    // What the other says is taken over for good.
    if (const auto broken = storage::firstBreak(otherRows))
        throw UnreadableInput(
            fmt::format("The other copy's journal is broken, so nothing was merged: {}.", *broken));
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
