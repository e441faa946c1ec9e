// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/TemporaryFolder.h"
#include "core/storage/Database.h"
#include "core/storage/FileIdentity.h"
#include "core/storage/ProjectFolder.h"
#include "core/storage/WriterLock.h"

#include <chrono>
#include <filesystem>
#include <memory>
#include <optional>

namespace lastrivet::storage {

/// Why a project is open for reading only.
enum class ReadOnlyCause {
    Asked,
    FolderNotWritable,
    OpenElsewhere,
    /// The file system keeps no locks.
    NoLocks,
};

/// A project's database, opened for writing where that is possible, else for reading.
struct Opening {
    /// Where the database is read from when its own folder cannot be written.
    std::unique_ptr<TemporaryFolder> copy;
    /// The right to write; null when the project is read-only.
    std::unique_ptr<WriterLock> lock;
    /// Empty when the project can be written.
    std::optional<ReadOnlyCause> readOnly;
    /// The other program that has it open for writing, as far as it says so.
    std::optional<WriterLock::Holder> holder;
    /// The project's own file, wherever the database is read from.
    std::optional<FileIdentity> identity;
    Database::Safety safety = Database::Safety::WriteAhead;
    std::unique_ptr<Database> database;
};

/// Opens the database, and brings an older one to the newest schema after a copy into `backups`.
/// Throws `UnreadableInput` for what is no project, is damaged, or is of a newer schema.
Opening openDatabase(const ProjectFolder &folder, bool readOnly,
                     std::chrono::sys_time<std::chrono::milliseconds> now);

/// Opens a temporary copy, brought to the newest schema, of a database that another program may be
/// writing to; the file itself is only read. Throws `UnreadableInput` as above.
Opening openCopyOf(const std::filesystem::path &database,
                   std::chrono::sys_time<std::chrono::milliseconds> now = {});

/// Thrown when another program made a project in the folder at the same time; the folder is its
/// own.
class MadeElsewhere : public NotWritable {
public:
    using NotWritable::NotWritable;
};

/// Makes the database of a new project, and takes the right to write to it. Throws `MadeElsewhere`.
Opening createDatabase(const ProjectFolder &folder,
                       std::chrono::sys_time<std::chrono::milliseconds> now);

/// A consistent copy of the database as one file, which survives a power cut.
void copyDatabase(const Database &database, const std::filesystem::path &to);

} // namespace lastrivet::storage
