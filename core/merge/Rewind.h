// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/merge/ChangeContent.h"
#include "core/merge/MergeState.h"
#include "core/storage/Journal.h"

#include <optional>
#include <set>
#include <span>

namespace lastrivet::merge {

/// Applies a change to what it was recorded on: every value must be as the change found it. Answers
/// the first record of which that is not so; `state` is then good for nothing any more.
std::optional<RecordRef> applyExactly(MergeState &state, const ChangeContent &content);

/// Takes the rows back, last in, first out; `state` is as the last of them left it. Answers which
/// records that touched. Throws `UnreadableInput` when a row does not fit what is there.
std::set<RecordRef> rewind(MergeState &state, std::span<const storage::JournalRow> rows);

} // namespace lastrivet::merge
