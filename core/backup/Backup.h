// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet::backup {

using Time = std::chrono::sys_time<std::chrono::milliseconds>;

/// How far a long copy has come.
struct CopyProgress {
    std::uint64_t bytes_done = 0;
    std::uint64_t bytes_in_all = 0;
};
/// False ends the copying.
using OnProgress = std::function<bool(const CopyProgress &)>;

/// Which files are read and compared with their hashes. Always those copied now, and originals that
/// were written to since the earlier backup copied them.
enum class Reading {
    NewFiles,
    /// All originals too, so that one that was damaged is told while the backup has it whole.
    Originals,
    /// The copies of earlier backups as well.
    EveryFile
};

/// What was copied, read back and found as it should be.
struct Report {
    /// The folder of the backup: a whole project of its own.
    std::filesystem::path place;
    std::size_t files_copied = 0;
    /// Files that an earlier backup has already.
    std::size_t files_kept = 0;
    std::uint64_t bytes_copied = 0;
    /// Names of files that the records speak of and that are neither in the project nor here.
    std::vector<std::string> missing;
    /// Files of the project that could not be read, or would lie outside the folder.
    std::vector<std::string> unreadable;
    /// Files that are no longer what was taken in; copied as they are, unless the backup has them
    /// as they were.
    std::vector<std::string> altered;
    /// Files that an earlier backup had and that no longer read back right; copied again.
    std::vector<std::string> damaged;
    /// Where in the backup's folder its earlier database is kept now, which was damaged; empty when
    /// it was not.
    std::string damaged_database;
    /// Files that lay beside such a database and held something else than the project's: kept under
    /// these names.
    std::vector<std::string> set_aside;
    /// The newest journal row's hash, 64 hex digits.
    std::string journal_hash;
    /// True when the copy is on the disk of the original, and would be lost with it.
    bool is_same_disk = false;

    /// True when every file that the records speak of is there as it was taken in.
    bool isWhole() const { return missing.empty() && unreadable.empty() && altered.empty(); }
};

/// Copies a project with all its files into `shelf / <name of the project's folder>`, only what is
/// new since the last time; each new file is read back from the disk and its hash compared. The
/// database comes last, in place of the one before, which stays among the copies in `backups`: so
/// the backup is a whole one at any moment, the last or the new. Where the one before is damaged,
/// all files are read back, and what is not the project's own is kept under another name, the
/// database among the copies. A file that an earlier backup has as it was taken in is never
/// replaced by what became of it.
///
/// `shelf` has to be there; it may be the place of an earlier backup itself. May run beside a
/// program that writes to the project, on any thread. Empty when `onProgress` ended it.
/// Throws `Fault`s that say what was kept; nothing is touched in a place of another project, or
/// of a backup in which somebody made changes of their own.
std::optional<Report> backUp(const std::filesystem::path &project,
                             const std::filesystem::path &shelf, Time now,
                             Reading reading = Reading::NewFiles,
                             const OnProgress &onProgress = {});

/// Where `backUp` puts the backup of a project.
std::filesystem::path placeOf(const std::filesystem::path &project,
                              const std::filesystem::path &shelf);

/// Makes a project again in a new folder, of a backup's folder, of one of the database copies in
/// its `backups`, or of a database elsewhere with the files beside it. Every file is compared with
/// its hash on the way. The folder appears when it is whole; until then it is called
/// `<project>.unfinished`.
///
/// Empty when `onProgress` ended it. Throws `Fault`s. Then nothing is left of the new folder.
std::optional<Report> restore(const std::filesystem::path &backup,
                              const std::filesystem::path &project, Time now,
                              const OnProgress &onProgress = {});

/// True when both lie on one file system, or nobody can tell.
bool isSameDisk(const std::filesystem::path &one, const std::filesystem::path &other);

/// A state of a project that `restore` can bring back.
struct KeptState {
    /// What to restore: the folder itself, or a database copy in its `backups`.
    std::filesystem::path what;
    std::chrono::sys_seconds made;
};
/// The states that can be restored from the folder of a backup or project, newest first: its own,
/// then those of its database copies. Empty when the folder is neither.
std::vector<KeptState> keptStates(const std::filesystem::path &folder);

} // namespace lastrivet::backup
