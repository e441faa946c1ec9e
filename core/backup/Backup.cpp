// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/backup/Backup.h"

#include "core/backup/FileCopies.h"
#include "core/base/Error.h"
#include "core/storage/DatabaseCopies.h"
#include "core/storage/Journal.h"
#include "core/storage/Opening.h"
#include "core/storage/RecordReader.h"
#include "core/storage/Schema.h"

#include <algorithm>
#include <fmt/format.h>

namespace lastrivet::backup {

namespace fs = std::filesystem;
using storage::Database;
using storage::ProjectFolder;

namespace {

constexpr std::string_view unfinished = ".records-new.db";

/// Every row's hash, oldest first: tells which copy goes on from which.
std::vector<std::string> chainOf(Database &database)
{
    std::vector<std::string> hashes;
    for (const auto &entry : storage::Journal(database).entries())
        hashes.push_back(entry.hash);
    return hashes;
}

/// The folder for a project's backup: a new one, or one that this project can go on in.
void requireOwnPlace(const ProjectFolder &place, Database &project, Time now)
{
    if (!fs::exists(place.root()))
        return;
    if (!fs::exists(place.database())) {
        if (!fs::is_empty(place.root()) && !fs::exists(place.photos()))
            throw NotWritable(fmt::format("{} is there already and is no backup of this project.",
                                          place.root().string()));
        return;
    }
    const auto ours = chainOf(project);
    const auto kept = storage::openDatabase(place, true, now);
    const auto theirs = chainOf(*kept.database);
    if (theirs.empty() || ours.empty() || theirs.front() != ours.front())
        throw NotWritable(
            fmt::format("{} holds another project; nothing was changed.", place.root().string()));
    if (theirs.size() > ours.size() || !std::equal(theirs.begin(), theirs.end(), ours.begin()))
        throw NotWritable(fmt::format("{} has changes that this project has not; they would be "
                                      "lost, so nothing was changed.",
                                      place.root().string()));
}

void requireApart(const fs::path &project, const fs::path &other)
{
    const fs::path inner = fs::weakly_canonical(other);
    const fs::path outer = fs::weakly_canonical(project);
    const auto [rest, ignored] =
        std::mismatch(outer.begin(), outer.end(), inner.begin(), inner.end());
    if (rest == outer.end())
        throw NotWritable(fmt::format("{} lies inside {}; choose another disk or folder.",
                                      other.string(), project.string()));
}

/// The name of the folder, also when the path ends in a slash.
std::string nameOf(const fs::path &folder)
{
    const fs::path whole = fs::weakly_canonical(folder);
    return whole.filename().string();
}

/// Puts the new database in the place of the one before, which becomes one of the copies.
void replaceDatabase(const ProjectFolder &place, const fs::path &fresh, Time now)
{
    if (fs::exists(place.database())) {
        Database before(place.database(), Database::Access::ReadOnly, place.safety());
        storage::addDatabaseCopy(before, place.backups(), now);
    }
    for (const auto *log : {"-wal", "-shm", "-journal"})
        fs::remove(place.database().string() + log);
    fs::rename(fresh, place.database());
    storage::syncFolder(place.root());
}

Report copyProject(const storage::Opening &source, const fs::path &files,
                   const ProjectFolder &place, Time now, const OnProgress &onProgress,
                   std::stop_token stop)
{
    Report report;
    report.place = place.root();
    const fs::path fresh = place.root() / unfinished;
    fs::remove(fresh);
    storage::copyVerified(*source.database, fresh);
    // From here on the copy counts: the project may go on beside.
    Database copied(fresh, Database::Access::Immutable, Database::Safety::RollbackJournal);
    const Records records = storage::RecordReader(copied.sql()).readAll();
    copyFiles(records, files, place.root(), report, onProgress, stop);
    const auto newest = storage::Journal(copied).newest();
    report.journal_hash = newest ? newest->hash : std::string();
    replaceDatabase(place, fresh, now);
    return report;
}

} // namespace

Report backUp(const fs::path &project, const fs::path &shelf, Time now,
              const OnProgress &onProgress, std::stop_token stop)
{
    return storage::withFaults([&] {
        const ProjectFolder from(project);
        const auto source = storage::openDatabase(from, true, now);
        const ProjectFolder place(shelf / nameOf(project));
        requireApart(project, place.root());
        requireOwnPlace(place, *source.database, now);
        fs::create_directories(shelf);
        place.make(storage::RecordReader(source.database->sql()).readAll().project.name);
        return copyProject(source, from.root(), place, now, onProgress, stop);
    });
}

Report restore(const fs::path &backup, const fs::path &project, Time now,
               const OnProgress &onProgress, std::stop_token stop)
{
    return storage::withFaults([&] {
        const bool isFile = fs::is_regular_file(backup);
        const fs::path files = isFile ? fs::weakly_canonical(backup).parent_path().parent_path()
                                      : backup;
        const ProjectFolder place(project);
        place.requireFree();
        requireApart(files, project);
        const storage::TemporaryFolder between;
        storage::Opening source;
        if (isFile) {
            // Opened through a folder of its own: a database file in `backups` is no project.
            const ProjectFolder lone(between.path());
            fs::copy_file(backup, lone.database());
            source = storage::openDatabase(lone, true, now);
        } else {
            source = storage::openDatabase(ProjectFolder(backup), true, now);
        }
        try {
            place.make(storage::RecordReader(source.database->sql()).readAll().project.name);
            return copyProject(source, files, place, now, onProgress, stop);
        } catch (...) {
            place.unmake();
            throw;
        }
    });
}

bool keepCopy(const fs::path &project, Time now)
{
    return storage::withFaults([&] {
        const ProjectFolder folder(project);
        const auto source = storage::openDatabase(folder, true, now);
        return storage::addDatabaseCopy(*source.database, folder.backups(), now).has_value();
    });
}

bool isCopyDue(const fs::path &project, Time now)
{
    const auto copies = storage::databaseCopies(ProjectFolder(project).backups());
    using std::chrono::days;
    return copies.empty() || std::chrono::floor<days>(copies.front().made) <
                                 std::chrono::floor<days>(now);
}

} // namespace lastrivet::backup
