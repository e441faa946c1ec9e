// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/backup/BackupPlace.h"

#include "core/base/Error.h"
#include "core/base/Tongue.h"
#include "core/storage/DatabaseCopies.h"
#include "core/storage/Integrity.h"
#include "core/storage/Journal.h"
#include "core/storage/Opening.h"
#include "core/storage/Schema.h"

#include <date/date.h>
#include <fmt/chrono.h>
#include <fmt/format.h>
#include <sys/stat.h>

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet::backup {

namespace fs = std::filesystem;
using storage::Database;

namespace {

constexpr std::string_view broughtName = ".records-new.db";

/// Every row's hash, oldest first: tells which copy goes on from which.
std::vector<std::string> chainOf(Database &database)
{
    std::vector<std::string> hashes;
    for (const auto &entry : storage::Journal(database).entries())
        hashes.push_back(entry.hash);
    return hashes;
}

using Chain = std::vector<std::string>;

bool isBefore(const Chain &theirs, const Chain &ours)
{
    return theirs.size() <= ours.size() && std::equal(theirs.begin(), theirs.end(), ours.begin());
}

/// Whether hashes differ because they rotted, and not because somebody made changes there. That
/// is worked out only where they differ, since it reads the whole journal.
bool isRotten(Database &database, const Chain &theirs, const Chain &ours)
{
    const bool isOfOne = !theirs.empty() && !ours.empty() && theirs.front() == ours.front();
    return isOfOne && !isBefore(theirs, ours) &&
           storage::firstBreak(storage::Journal(database).rows()).has_value();
}

/// The chain of the database there; nothing when it is damaged.
std::optional<Chain> chainAt(const storage::ProjectFolder &folder, const Chain &ours, Time now)
{
    // The project is another place, of which the sentence must not be taken to speak.
    return storage::withFaultsAt(folder.root(), [&]() -> std::optional<Chain> {
        try {
            return storage::withFaults([&]() -> std::optional<Chain> {
                const auto kept = storage::openDatabase(folder, true, now);
                Chain chain = chainOf(*kept.database);
                if (isRotten(*kept.database, chain, ours))
                    return std::nullopt;
                return chain;
            });
        } catch (const storage::NotReadHere &) {
            throw;
        } catch (const UnreadableInput &) {
            return std::nullopt;
        }
    });
}

/// The chain of the newest database copy there that can be read, if there is one.
std::optional<Chain> chainOfCopies(const storage::ProjectFolder &folder)
{
    for (const auto &copy : storage::databaseCopies(folder.backups())) {
        try {
            return storage::withFaults([&] {
                Database kept(copy.file, Database::Access::Immutable,
                              Database::Safety::RollbackJournal);
                return chainOf(kept);
            });
        } catch (const Fault &) {
            continue;
        }
    }
    return std::nullopt;
}

[[noreturn]] void refuseStranger(const storage::ProjectFolder &folder)
{
    throw NotWritable(Message{"{0} is there already and is no backup of this project.",
                              {folder.root().string()}});
}

/// Refuses what a project with the chain `ours` does not go on from.
void requireBefore(const Chain &theirs, const Chain &ours, const storage::ProjectFolder &folder)
{
    const std::string place = folder.root().string();
    if (theirs.empty() || ours.empty() || theirs.front() != ours.front())
        throw NotWritable(Message{"{0} holds another project; nothing was changed.", {place}});
    if (!isBefore(theirs, ours))
        throw NotWritable(Message{"{0} has changes that this project has not; they would be lost, "
                                  "so nothing was changed. Choose another folder.",
                                  {place}});
}

bool hasDamage(const fs::path &database)
{
    try {
        return storage::withFaults([&] {
            const Database read(database, Database::Access::ReadOnly,
                                Database::Safety::RollbackJournal);
            return !storage::damagesOf(read).empty();
        });
    } catch (const UnreadableInput &) {
        return true;
    }
}

Time lastWritten(const fs::path &file)
{
    return std::chrono::floor<std::chrono::milliseconds>(
        std::chrono::file_clock::to_sys(fs::last_write_time(file)));
}

/// Moves a damaged database among the copies, with the logs that belong to it.
fs::path setAside(const storage::ProjectFolder &folder)
{
    const auto made = std::chrono::floor<std::chrono::seconds>(lastWritten(folder.database()));
    const std::string stamp =
        fmt::format("{:%Y%m%dT%H%M%S}Z", fmt::gmtime(std::chrono::system_clock::to_time_t(made)));
    fs::create_directories(folder.backups());
    fs::path kept;
    for (int number = 1; kept.empty() || fs::exists(kept); ++number)
        kept = folder.backups() / fmt::format("records-damaged-{}-{}.db", stamp, number);
    const std::string database = folder.database().string();
    // The logs go first: left behind, they would be taken for those of the new database.
    for (const std::string suffix : {"-wal", "-journal", ""}) {
        if (fs::exists(database + suffix))
            fs::rename(database + suffix, kept.string() + suffix);
    }
    fs::remove(database + "-shm");
    storage::syncFolder(folder.backups());
    return kept;
}

} // namespace

BackupPlace::BackupPlace(fs::path root)
    : m_folder(std::move(root))
{
}

BackupPlace::~BackupPlace()
{
    std::error_code none;
    if (m_lock)
        fs::remove(m_folder.root() / broughtName, none);
}

void BackupPlace::requireOwn(Database &project, Time now)
{
    if (!fs::exists(m_folder.root()))
        return;
    if (!fs::exists(m_folder.database())) {
        // An interrupted first backup has no database yet.
        if (!fs::is_empty(m_folder.root()) && !fs::exists(m_folder.lock()))
            refuseStranger(m_folder);
        return;
    }
    const Chain ours = chainOf(project);
    auto theirs = chainAt(m_folder, ours, now);
    m_isDamaged = !theirs;
    if (!theirs) {
        // Every backup has these; a file of the name alone may be anybody's.
        if (!fs::exists(m_folder.lock()) && !fs::exists(m_folder.readMe()))
            refuseStranger(m_folder);
        theirs = chainOfCopies(m_folder);
    }
    if (theirs)
        requireBefore(*theirs, ours, m_folder);
}

void BackupPlace::take(std::string_view projectName, Time now)
{
    fs::create_directories(m_folder.root());
    m_lock = storage::WriterLock::take(m_folder.lock(), now);
    if (!m_lock)
        throw NotWritable(Message{"Another program has {0} open for writing; close it first.",
                                  {m_folder.root().string()}});
    m_folder.make(projectName);
}

fs::path BackupPlace::bring(Database &database) const
{
    const fs::path brought = m_folder.root() / broughtName;
    fs::remove(brought);
    storage::copyVerified(database, brought);
    return brought;
}

bool BackupPlace::keepBefore() const
{
    if (m_isDamaged)
        return false;
    try {
        storage::withFaults([&] {
            const Time made = lastWritten(m_folder.database());
            Database before(m_folder.database(), Database::Access::ReadWrite,
                            Database::Safety::RollbackJournal);
            storage::addDatabaseCopy(before, m_folder.backups(), made);
        });
        return true;
    } catch (const Fault &) {
        if (!hasDamage(m_folder.database()))
            throw;
        return false;
    }
}

fs::path BackupPlace::settle(const fs::path &brought) const
{
    fs::path kept;
    if (fs::exists(m_folder.database()) && !keepBefore())
        kept = setAside(m_folder);
    fs::rename(brought, m_folder.database());
    storage::syncFolder(m_folder.root());
    return kept;
}

Message BackupPlace::whatStays(const Report &report) const
{
    std::error_code none;
    const auto made = fs::last_write_time(m_folder.database(), none);
    const auto day = [&] {
        return fmt::format(
            "{:%Y-%m-%d}",
            fmt::gmtime(std::chrono::system_clock::to_time_t(
                std::chrono::floor<std::chrono::seconds>(std::chrono::file_clock::to_sys(made)))));
    };
    const std::string before = none || m_isDamaged
                                   ? nested({"There is no whole backup yet", {}})
                                   : nested({"The backup of {0} stays as it was", {day()}});
    if (report.files_copied == 1)
        return {"{0}, and 1 file copied so far will not be copied again.", {before}};
    return {"{0}, and {1} files copied so far will not be copied again.",
            {before, std::to_string(report.files_copied)}};
}

void requireApart(const fs::path &outer, const fs::path &inner)
{
    const fs::path within = fs::weakly_canonical(inner);
    const fs::path whole = fs::weakly_canonical(outer);
    const auto [rest, ignored] =
        std::mismatch(whole.begin(), whole.end(), within.begin(), within.end());
    if (rest == whole.end())
        throw NotWritable(Message{"{0} lies inside {1}; choose another disk or folder.",
                                  {inner.string(), outer.string()}});
}

bool isSameDisk(const fs::path &one, const fs::path &other)
{
    struct stat first {};
    struct stat second {};
    return ::stat(one.c_str(), &first) != 0 || ::stat(other.c_str(), &second) != 0 ||
           first.st_dev == second.st_dev;
}

} // namespace lastrivet::backup
