// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/backup/Backup.h"

#include "core/backup/BackupPlace.h"
#include "core/backup/FileCopies.h"
#include "core/base/Error.h"
#include "core/base/Tongue.h"
#include "core/evidence/files/NewFile.h"
#include "core/storage/DatabaseCopies.h"
#include "core/storage/Journal.h"
#include "core/storage/Opening.h"
#include "core/storage/RecordReader.h"

#include <fmt/format.h>

#include <unistd.h>

#include <fstream>
#include <system_error>
#include <vector>

namespace lastrivet::backup {

namespace fs = std::filesystem;
using storage::Database;
using storage::ProjectFolder;

namespace {

enum class Which { AllFiles, NamedFiles };

/// A path without the slash at its end, so that it has a name.
fs::path named(const fs::path &folder)
{
    const fs::path whole = fs::absolute(folder).lexically_normal();
    return whole.has_filename() ? whole : whole.parent_path();
}

std::string nameOfProject(const Database &database)
{
    Records records;
    storage::RecordReader(database.sql()).read(records, RecordType::Project);
    return records.project.name;
}

/// One run of copying a project from here to there.
struct Copying {
    Database &database;
    fs::path files;
    const BackupPlace &place;
    Which which;
    Reading reading;
    const OnProgress &onProgress;
    Report report{};

    /// False when it was ended early.
    bool run()
    {
        const fs::path &to = place.folder().root();
        report.place = to;
        report.is_same_disk = isSameDisk(files, to);
        const fs::path brought = place.bring(database);
        // From here on the copy counts, whatever is written to the project meanwhile.
        Database copied(brought, Database::Access::Immutable, Database::Safety::RollbackJournal);
        const Records records = storage::RecordReader(copied.sql()).readAll();
        const auto list = which == Which::AllFiles ? allFiles(records, files)
                                                   : namedFiles(records, copied, files);
        // A disk that damaged the database may have damaged anything.
        const bool isSuspect = place.isDamaged();
        if (!copyFiles(list, files, to, isSuspect ? Reading::EveryFile : reading,
                       isSuspect ? Differing::SetAside : Differing::Replace, report, onProgress))
            return false;
        report.journal_hash = storage::Journal(copied).newestHash();
        const fs::path damaged = place.settle(brought);
        if (!damaged.empty())
            report.damaged_database = damaged.lexically_relative(to).generic_string();
        return true;
    }
};

/// Where the files lie that a single database speaks of: beside it, or beside the folder of copies
/// that it lies in.
fs::path filesOf(const fs::path &database)
{
    const fs::path folder = fs::weakly_canonical(database).parent_path();
    const fs::path above = folder.parent_path();
    return folder == ProjectFolder(above).backups() ? above : folder;
}

/// What is restored: the folder of a backup or project, or a single database.
struct Origin {
    explicit Origin(const fs::path &backup, Time now)
        : isFile(fs::is_regular_file(backup))
        , files(isFile ? filesOf(backup) : named(backup))
        // Changes may still wait in a log beside a single file, too.
        , source(isFile ? storage::openCopyOf(backup, now)
                        : storage::openDatabase(ProjectFolder(files), true, now))
    {
    }

    /// Files are taken from a folder where others may lie; only a project must not get one inside.
    void requireApartFrom(const fs::path &target) const
    {
        if (!isFile || fs::exists(ProjectFolder(files).database()))
            requireApart(files, target);
    }

    bool isFile;
    fs::path files;
    storage::Opening source;
};

/// A file of this name says that a project is being put together in its folder. It is made first
/// and removed last, so that nothing else is ever taken for what an interrupted run left.
bool isMark(const fs::path &file)
{
    const std::string name = file.filename().string();
    return name.starts_with(evidence::leftoverPrefix) && name.ends_with("-restoring");
}

bool hasMark(const fs::path &folder)
{
    std::error_code none;
    fs::directory_iterator entry(folder, none);
    for (; !none && entry != fs::directory_iterator(); entry.increment(none)) {
        if (isMark(entry->path()))
            return true;
    }
    return false;
}

/// Removes the folder, the mark in it last of all.
void discard(const fs::path &folder)
{
    std::error_code none;
    std::vector<fs::path> inside;
    fs::directory_iterator entry(folder, none);
    for (; !none && entry != fs::directory_iterator(); entry.increment(none)) {
        if (!isMark(entry->path()))
            inside.push_back(entry->path());
    }
    for (const fs::path &left : inside)
        fs::remove_all(left, none);
    fs::remove_all(folder, none);
}

/// Where a project is put together again, until it is whole; vanishes when it never is.
class Unfinished {
public:
    explicit Unfinished(const fs::path &target)
        : m_target(target)
        , m_root(target.string() + ".unfinished")
    {
    }
    ~Unfinished()
    {
        std::error_code none;
        if (m_isOurs) {
            discard(m_root);
        } else if (!m_mark.empty()) {
            fs::remove(m_mark, none);
            fs::remove(m_root, none);
        }
    }
    Unfinished(const Unfinished &) = delete;
    Unfinished &operator=(const Unfinished &) = delete;

    const fs::path &root() const { return m_root; }
    void make(BackupPlace &place, const std::string &projectName, Time now)
    {
        clear(now);
        mark();
        place.take(projectName, now);
        m_isOurs = true;
    }
    void publish()
    {
        fs::rename(m_root, m_target);
        m_isOurs = false;
        std::error_code none;
        fs::remove(m_target / m_mark.filename(), none);
        m_mark.clear();
        storage::syncFolder(m_target.parent_path());
    }

private:
    /// What an interrupted run left was never a whole project.
    void clear(Time now) const
    {
        if (!fs::exists(m_root))
            return;
        const fs::path lock = ProjectFolder(m_root).lock();
        const bool isLeft = hasMark(m_root);
        const bool isHeld = isLeft && fs::exists(lock);
        const auto taken = isHeld ? storage::WriterLock::take(lock, now) : nullptr;
        if (!isLeft || (isHeld && !taken))
            throw NotWritable(Message{"{0} is in the way; rename it, or choose another name.",
                                      {m_root.string()}});
        discard(m_root);
    }
    void mark()
    {
        fs::create_directories(m_root);
        m_mark = m_root / fmt::format("{}{}-restoring", evidence::leftoverPrefix, ::getpid());
        std::ofstream(m_mark).close();
        storage::syncFile(m_mark);
        storage::syncFolder(m_root);
    }

    fs::path m_target;
    fs::path m_root;
    fs::path m_mark;
    bool m_isOurs = false;
};

} // namespace

fs::path placeOf(const fs::path &project, const fs::path &shelf)
{
    const fs::path name = named(project).filename();
    const bool isPlaceItself =
        named(shelf).filename() == name && fs::exists(ProjectFolder(shelf).database());
    return isPlaceItself ? named(shelf) : named(shelf) / name;
}

std::vector<KeptState> keptStates(const fs::path &folder)
{
    const ProjectFolder place(folder);
    std::error_code none;
    const auto written = fs::last_write_time(place.database(), none);
    if (none)
        return {};
    std::vector<KeptState> states{{folder, std::chrono::floor<std::chrono::seconds>(
                                               std::chrono::file_clock::to_sys(written))}};
    for (const auto &copy : storage::databaseCopies(place.backups()))
        states.push_back({copy.file, copy.made});
    return states;
}

std::optional<Report> backUp(const fs::path &project, const fs::path &shelf, Time now,
                             Reading reading, const OnProgress &onProgress)
{
    return storage::withFaults([&]() -> std::optional<Report> {
        if (!fs::is_directory(shelf))
            throw NotWritable(
                Message{"There is no folder {0}; plug its disk in, or make it.", {shelf.string()}});
        const auto source = storage::openDatabase(ProjectFolder(project), true, now);
        BackupPlace place(placeOf(project, shelf));
        requireApart(project, place.folder().root());
        place.requireOwn(*source.database, now);
        place.take(nameOfProject(*source.database), now);
        Copying copying{*source.database, named(project), place,
                        Which::AllFiles,  reading,        onProgress};
        try {
            const bool isDone = storage::withFaults([&] { return copying.run(); });
            return isDone ? std::optional(copying.report) : std::nullopt;
        } catch (const Fault &fault) {
            throw NotSaved(
                Message{"The backup was not finished: {0} {1}",
                        {nested(fault.message()), nested(place.whatStays(copying.report))}});
        }
    });
}

std::optional<Report> restore(const fs::path &backup, const fs::path &project, Time now,
                              const OnProgress &onProgress)
{
    return storage::withFaults([&]() -> std::optional<Report> {
        const fs::path target = named(project);
        ProjectFolder(target).requireFree();
        const Origin origin(backup, now);
        origin.requireApartFrom(target);
        Unfinished unfinished(target);
        Report report;
        {
            BackupPlace place(unfinished.root());
            unfinished.make(place, nameOfProject(*origin.source.database), now);
            Copying copying{*origin.source.database,
                            origin.files,
                            place,
                            origin.isFile ? Which::NamedFiles : Which::AllFiles,
                            Reading::EveryFile,
                            onProgress};
            if (!copying.run())
                return std::nullopt;
            report = copying.report;
        }
        unfinished.publish();
        report.place = target;
        return report;
    });
}

} // namespace lastrivet::backup
