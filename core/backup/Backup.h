// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <stop_token>
#include <string>
#include <vector>

namespace lastrivet::backup {

using Time = std::chrono::sys_time<std::chrono::milliseconds>;

/// How far a long copy has come.
struct CopyProgress {
    std::size_t files_done = 0;
    std::size_t files_in_all = 0;
};
using OnProgress = std::function<void(const CopyProgress &)>;

/// What was copied, read back and found as it should be.
struct Report {
    /// The folder of the backup: a whole project of its own.
    std::filesystem::path place;
    std::size_t files_copied = 0;
    /// Files that an earlier backup has already.
    std::size_t files_kept = 0;
    std::uint64_t bytes_copied = 0;
    /// Names of files that the records speak of and that are not in the project.
    std::vector<std::string> missing;
    /// Files that are no longer what was taken in; copied as they are.
    std::vector<std::string> altered;
    /// The newest journal row's hash, 64 hex digits.
    std::string journal_hash;
};

/// Copies a project with all its files into `shelf / <name of the project's folder>`, only what is
/// new since the last time; each new file is read back from the disk and its hash compared. The
/// database comes last, in place of the one before, which stays among the copies in `backups`.
///
/// May run beside a program that writes to the project, on any thread. What an interrupted backup
/// copied is whole and counts at the next one. Throws `Fault`s: when the place belongs to another
/// project, or to a backup in which somebody made changes of their own, nothing is touched there.
Report backUp(const std::filesystem::path &project, const std::filesystem::path &shelf, Time now,
              const OnProgress &onProgress = {}, std::stop_token stop = {});

/// Makes a project again in a new folder, of a backup's folder or of one of the database copies in
/// its `backups`. Every file is compared with its hash on the way.
///
/// Throws `Fault`s; then nothing is left of the new folder.
Report restore(const std::filesystem::path &backup, const std::filesystem::path &project, Time now,
               const OnProgress &onProgress = {}, std::stop_token stop = {});

/// Copies the project's database into its own `backups`, unless the newest copy there holds the
/// same state; drops old copies so that 7 days, 4 weeks and 12 months stay. True when it copied.
/// May run beside a program that writes, on any thread. Throws `Fault`s.
bool keepCopy(const std::filesystem::path &project, Time now);
/// True when the newest copy of the database is of an earlier day (UTC), or there is none.
bool isCopyDue(const std::filesystem::path &project, Time now);

} // namespace lastrivet::backup
