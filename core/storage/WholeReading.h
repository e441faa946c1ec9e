// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"
#include "core/storage/Database.h"

#include <cstdint>

namespace lastrivet::storage {

/// The size in bytes from which on a second thread makes reading a database quicker.
inline constexpr std::int64_t worthTwoThreads = 8 * 1024 * 1024;

/// All records, as `RecordReader` has them, read by two threads when the file is large: the second
/// has a connection of its own and helps if it sees the same newest row of the journal. Within the
/// caller's `ReadTransaction`.
Records readWhole(const Database &database, std::int64_t worth = worthTwoThreads);

} // namespace lastrivet::storage
