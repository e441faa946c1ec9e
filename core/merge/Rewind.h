// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/merge/MergeState.h"
#include "core/storage/Journal.h"

#include <set>
#include <span>

namespace lastrivet::merge {

/// Takes the rows back, last in, first out; `state` is as the last of them left it. Answers which
/// records that touched. Throws `UnreadableInput` when a row does not fit what is there.
std::set<RecordRef> rewind(MergeState &state, std::span<const storage::JournalRow> rows);

} // namespace lastrivet::merge
