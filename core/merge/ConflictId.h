// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/ConflictTable.h"

namespace lastrivet::merge {

/// An id that every copy gives to the same conflict: made of what it is about, what lost, and by
/// whom. Below 2^53.
std::int64_t conflictId(const storage::ConflictRow &conflict);

} // namespace lastrivet::merge
