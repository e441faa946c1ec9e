// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/Database.h"

#include <chrono>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet::storage {

/// An earlier state of a database as a file, named `records-20261125T171500Z-4f2a91bc.db` after the
/// time of copying and the hash of its newest journal row.
struct DatabaseCopy {
    std::filesystem::path file;
    std::chrono::sys_seconds made;
    /// The first eight hex digits of the newest journal row's hash.
    std::string journal;
};

/// The copies that lie in a folder, newest first; other files are passed over.
std::vector<DatabaseCopy> databaseCopies(const std::filesystem::path &folder);

/// The copies that may be deleted. Kept are the newest copy of each of the 7 newest days (UTC), of
/// the 4 newest ISO weeks and of the 12 newest months that have one. `copies`: newest first.
std::vector<DatabaseCopy> superfluousCopies(const std::vector<DatabaseCopy> &copies);

/// Copies the database into the folder, verifies the copy, and deletes the superfluous ones; never
/// the new copy, whatever the clock says. Empty when the newest copy there holds the same state.
/// Throws `Fault`s; then there is no new copy.
std::optional<DatabaseCopy> addDatabaseCopy(Database &database, const std::filesystem::path &folder,
                                            std::chrono::sys_time<std::chrono::milliseconds> now);

/// Copies the database to a new file and opens the copy: SQLite's whole integrity check has to find
/// nothing, and the rows of every table and the newest journal row have to be the original's.
/// Throws `Fault`s, and leaves no file then.
void copyVerified(Database &database, const std::filesystem::path &to);

} // namespace lastrivet::storage
