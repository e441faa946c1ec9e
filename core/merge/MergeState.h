// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"
#include "core/storage/ConflictTable.h"

namespace lastrivet::merge {

/// What a project holds at one point of its history.
struct MergeState {
    Records records;
    storage::ConflictRows conflicts;

    friend bool operator==(const MergeState &, const MergeState &) = default;
};

} // namespace lastrivet::merge
