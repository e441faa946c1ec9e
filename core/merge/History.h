// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/Journal.h"

#include <span>
#include <vector>

namespace lastrivet::merge {

using History = std::vector<storage::JournalRow>;

/// True for what a person or the program did in one copy; false for a merge itself, which only
/// repeats what other rows did.
bool isPrimary(const storage::JournalRow &row);

/// How many rows from the beginning two copies of a project have in common, cut so far back that
/// nothing either has beyond them is older than the last of them. Every order in which copies are
/// merged then plays the same changes in the same order. 0 when they are no copies of one project.
std::size_t commonRows(const History &mine, const History &other);

/// How many of the common rows a replay leaves as they are. A change that came by way of a third
/// copy may have been made without some of what these two have in common, and only what was played
/// tells how the two met: then everything but the beginning is played again.
std::size_t rowsToKeep(std::size_t common, const History &mine, const History &other);

/// The primary changes of both beyond the common rows, each once, in the order of (stamp,
/// change_id).
std::vector<const storage::JournalRow *> unionBeyond(std::size_t common, const History &mine,
                                                     const History &other);

/// The primary changes of `other` that `mine` has not, in the order of (stamp, change_id).
std::vector<const storage::JournalRow *> newTo(const History &mine, const History &other);

} // namespace lastrivet::merge
