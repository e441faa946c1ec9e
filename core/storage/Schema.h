// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Error.h"
#include "core/storage/Database.h"

#include <filesystem>

namespace lastrivet::storage {

/// Says in a database file's header that it is a project of ours: "LRvt".
inline constexpr std::int32_t applicationId = 0x4c527674;

/// A database that cannot be read here and may be whole all the same: another program wrote it, or
/// a newer Lastrivet, or it must not be read.
class NotReadHere : public UnreadableInput {
public:
    using UnreadableInput::UnreadableInput;
};

/// The step that the database is at.
int schemaOf(const Database &database);
int newestSchema();

/// True for a file whose first page says that it is a database of a project.
bool isProjectDatabase(const std::filesystem::path &file);
/// Throws `UnreadableInput` unless the folder has a database whose first page says that it is a
/// project that this program can read; `NotReadHere` where nothing says that it is damaged. Nothing
/// is written.
void requireProject(const std::filesystem::path &folder, const std::filesystem::path &database);
/// Throws `UnreadableInput` when the file is shorter than its first page says.
void requireWholeFile(const std::filesystem::path &database);
/// Throws when an open database is of a newer schema, or has none, or not our tables: its first
/// page may lie in a write-ahead log, where `requireProject` does not look.
void requireReadableSchema(Database &database);

} // namespace lastrivet::storage
