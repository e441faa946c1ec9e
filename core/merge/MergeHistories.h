// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/merge/History.h"
#include "core/merge/MergeState.h"

#include <set>
#include <vector>

namespace lastrivet::merge {

/// What two copies of a project come to.
struct MergedHistories {
    MergeState state;
    /// The records that may differ from what the first copy held.
    std::set<RecordRef> touched;
    /// What the first copy did not have, oldest first; points into the other's history.
    std::vector<const storage::JournalRow *> carried;
    /// The records of `state`, and the pictures and papers that only a change that was left out put
    /// on record: whoever lets that in later needs their files, too.
    Records with_left_out;
};

/// Brings the changes of `other` to a copy that holds `mine` and got there by `myRows`. The outcome
/// is the same whichever copy is the first. Throws `UnreadableInput` when the two are no copies of
/// one project, or when the journal is damaged.
MergedHistories mergeHistories(MergeState mine, const History &myRows, const History &otherRows);

} // namespace lastrivet::merge
