// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/Opening.h"

#include "core/storage/Migration.h"
#include "core/storage/Schema.h"
#include "core/storage/SchemaCheck.h"

#include <SQLiteCpp/Statement.h>

#include <unistd.h>

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <spdlog/spdlog.h>

namespace lastrivet::storage {

namespace fs = std::filesystem;
using Time = std::chrono::sys_time<std::chrono::milliseconds>;

namespace {

/// Changes that are not in the database file: to be folded in, or to be rolled back.
constexpr std::array<std::string_view, 2> logs{"-wal", "-journal"};

fs::path beside(const fs::path &database, std::string_view suffix)
{
    return database.string() + std::string(suffix);
}

bool isNotEmpty(const fs::path &file)
{
    std::error_code none;
    const auto size = fs::file_size(file, none);
    return !none && size > 0;
}

bool hasLog(const fs::path &database)
{
    return std::any_of(logs.begin(), logs.end(), [&](std::string_view suffix) {
        return isNotEmpty(beside(database, suffix));
    });
}

/// Sizes and times of the database and its logs, to notice that somebody wrote in between.
std::vector<std::uintmax_t> stateOf(const fs::path &database)
{
    std::vector<std::uintmax_t> state;
    for (const auto &file : {database, beside(database, logs[0]), beside(database, logs[1])}) {
        std::error_code none;
        state.push_back(fs::file_size(file, none));
        state.push_back(std::uintmax_t(fs::last_write_time(file, none).time_since_epoch().count()));
    }
    return state;
}

void copyAsOwn(const fs::path &from, const fs::path &to)
{
    fs::copy_file(from, to, fs::copy_options::overwrite_existing);
    fs::permissions(to, fs::perms::owner_write, fs::perm_options::add);
}

void copyWithLogs(const fs::path &database, const fs::path &to)
{
    for (int tries = 0; tries < 5; ++tries) {
        const auto before = stateOf(database);
        copyAsOwn(database, to);
        for (const auto suffix : logs) {
            fs::remove(beside(to, suffix));
            if (isNotEmpty(beside(database, suffix)))
                copyAsOwn(beside(database, suffix), beside(to, suffix));
        }
        if (stateOf(database) == before)
            return;
    }
    throw NotReadHere("Another program keeps writing to the project; it could not be copied.");
}

std::unique_ptr<Database> openCopy(Opening &opening, const fs::path &of, Time now)
{
    opening.copy = std::make_unique<TemporaryFolder>();
    const auto copied = opening.copy->path() / "records.db";
    copyWithLogs(of, copied);
    auto database = std::make_unique<Database>(copied, Database::Access::ReadWrite,
                                               Database::Safety::WriteAhead);
    requireReadableSchema(*database);
    const bool isOlder = schemaOf(*database) < newestSchema();
    runSteps(*database, schemaSteps(), now);
    if (isOlder)
        renewSearch(*database);
    return database;
}

std::unique_ptr<Database> openForReading(Opening &opening, const ProjectFolder &folder, Time now)
{
    // Without its shared memory a database with a log cannot be read in place; and read as if it
    // had none, it would hide the last changes.
    const bool isShared = opening.safety == Database::Safety::RollbackJournal;
    const bool isFrozen = opening.readOnly == ReadOnlyCause::FolderNotWritable;
    // An interrupted change is rolled back by a program that may write, or in a copy.
    const bool isHalfDone = isNotEmpty(beside(folder.database(), logs[1]));
    if (isHalfDone || (hasLog(folder.database()) && (isFrozen || isShared)))
        return openCopy(opening, folder.database(), now);
    auto database = std::make_unique<Database>(
        folder.database(), isFrozen ? Database::Access::Immutable : Database::Access::ReadOnly,
        opening.safety);
    requireReadableSchema(*database);
    if (schemaOf(*database) < newestSchema())
        return openCopy(opening, folder.database(), now);
    return database;
}

std::optional<ReadOnlyCause> causeToReadOnly(Opening &opening, const ProjectFolder &folder,
                                             bool asked, Time now)
{
    if (!folder.isWritable())
        return ReadOnlyCause::FolderNotWritable;
    if (asked)
        return ReadOnlyCause::Asked;
    try {
        opening.lock = WriterLock::take(folder.lock(), now);
    } catch (const LocksUnknown &unknown) {
        spdlog::warn("{}", unknown.what());
        return ReadOnlyCause::NoLocks;
    }
    if (opening.lock)
        return std::nullopt;
    opening.holder = WriterLock::holder(folder.lock());
    return ReadOnlyCause::OpenElsewhere;
}

} // namespace

Opening openDatabase(const ProjectFolder &folder, bool readOnly, Time now)
{
    requireProject(folder.root(), folder.database());
    requireWholeFile(folder.database());
    Opening opening;
    opening.identity = identityOf(folder.database());
    opening.safety = folder.safety();
    opening.readOnly = causeToReadOnly(opening, folder, readOnly, now);
    if (opening.readOnly) {
        opening.database = openForReading(opening, folder, now);
        return opening;
    }
    opening.database =
        std::make_unique<Database>(folder.database(), Database::Access::ReadWrite, opening.safety);
    requireReadableSchema(*opening.database);
    requireOwnTriggers(*opening.database);
    migrate(*opening.database, folder, now);
    return opening;
}

Opening openCopyOf(const fs::path &database, Time now)
{
    // A copy of another name was named itself, not the folder around it.
    const ProjectFolder folder(database.parent_path());
    requireProject(folder.database() == database ? folder.root() : database, database);
    requireWholeFile(database);
    Opening opening;
    opening.readOnly = ReadOnlyCause::Asked;
    opening.database = openCopy(opening, database, now);
    return opening;
}

Opening createDatabase(const ProjectFolder &folder, Time now)
{
    Opening opening;
    opening.lock = WriterLock::take(folder.lock(), now);
    if (!opening.lock)
        throw MadeElsewhere("Another program makes a project in this folder just now.");
    // It may have come and gone since the folder was found free.
    if (fs::exists(folder.database()))
        throw MadeElsewhere(
            Message{"{0} exists already; choose another name.", {folder.root().string()}});
    opening.database = std::make_unique<Database>(Database::create(folder.database()));
    // Before write-ahead mode begins, so that the first page on disk identifies the file.
    runSteps(*opening.database);
    opening.safety = folder.safety();
    opening.database->use(opening.safety);
    opening.identity = identityOf(folder.database());
    syncFolder(folder.root());
    return opening;
}

void copyDatabase(const Database &database, const fs::path &to)
{
    // Under its own name a copy is whole, whenever the power fails.
    const auto unfinished =
        to.parent_path() / fmt::format(".tmp-{}-{}", ::getpid(), to.filename().string());
    // SQLite keeps a journal beside the file that it writes, and may not get to remove it.
    const auto discard = [&] {
        std::error_code ignored;
        fs::remove(unfinished, ignored);
        fs::remove(beside(unfinished, "-journal"), ignored);
    };
    discard();
    try {
        SQLite::Statement copy(database.sql(), "VACUUM INTO ?");
        copy.bind(1, unfinished.string());
        copy.exec();
        syncFile(unfinished);
        fs::rename(unfinished, to);
    } catch (...) {
        discard();
        throw;
    }
    syncFolder(to.parent_path());
}

} // namespace lastrivet::storage
