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

/// A project's database, opened the best way its folder allows.
struct Opening {
    /// Where the database is read from when it lies in a folder that cannot be written.
    std::unique_ptr<TemporaryFolder> copy;
    std::unique_ptr<WriterLock> lock;
    std::optional<ReadOnlyCause> readOnly;
    /// Who has it open for writing, where another program has and said so.
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

/// Opens a copy of a database that another program may be writing to just now, at the newest
/// schema; the file itself is only read. Throws `UnreadableInput` as above.
Opening openCopyOf(const std::filesystem::path &database,
                   std::chrono::sys_time<std::chrono::milliseconds> now = {});

/// Another program was quicker to make a project in a folder; what is there is that program's.
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
