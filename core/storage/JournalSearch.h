// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/RecordType.h"
#include "core/storage/Database.h"

#include <cstdint>
#include <set>
#include <vector>

namespace lastrivet::storage {

/// The journal rows whose changesets touch any of the records, by seq, oldest first.
std::vector<std::int64_t> rowsTouching(const Database &database,
                                       const std::set<RecordRef> &records);

} // namespace lastrivet::storage
