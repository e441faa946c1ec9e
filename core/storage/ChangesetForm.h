// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <span>

namespace lastrivet::storage {

/// True when the bytes are changes from end to end, as SQLite's session extension writes them (its
/// file sqlite3session.c, "CHANGESET FORMAT"). SQLite itself does not check it: a table's name that
/// is not terminated sends version 3.40 into an endless loop.
bool isWellFormedChangeset(std::span<const std::uint8_t> bytes);

} // namespace lastrivet::storage
