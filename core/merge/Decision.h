// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/merge/MergeState.h"
#include "core/storage/Journal.h"
#include "core/storage/RecordRows.h"

#include <set>
#include <string>

namespace lastrivet::merge {

/// What a decision makes of a project.
struct Decided {
    MergeState state;
    std::set<RecordRef> touched;
    /// Names under which the files of photographs may lie that it puts on record, or gives another
    /// name.
    std::set<std::string> files;
};

/// The cell of its record's rows that a conflict is about; null when it is not there any more.
storage::Cell *cellOf(storage::RecordRows &rows, const storage::ConflictRow &conflict);

/// Whether what lost can take its place by itself. Of an ordered list it cannot: the row may have
/// another place by now.
bool canBeTaken(const storage::ConflictRow &conflict);

/// Settles a conflict: what stands stays, or what lost takes its place. `leftOut` is the change
/// that was left out, null for conflicts of other kinds. Says why when what lost cannot be taken.
Result<Decided, Message> decide(const MergeState &before, std::int64_t conflict,
                                ConflictDecision decision, Moment now,
                                const storage::JournalRow *leftOut);

} // namespace lastrivet::merge
