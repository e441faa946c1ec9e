// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/backup/Backup.h"
#include "core/base/Message.h"
#include "core/storage/ProjectFolder.h"
#include "core/storage/WriterLock.h"

#include <memory>
#include <string_view>

namespace lastrivet::backup {

/// The folder of a backup, locked while it is written to. Throws `Fault`s.
class BackupPlace {
public:
    explicit BackupPlace(std::filesystem::path root);
    ~BackupPlace();
    BackupPlace(const BackupPlace &) = delete;
    BackupPlace &operator=(const BackupPlace &) = delete;

    const storage::ProjectFolder &folder() const { return m_folder; }
    /// Refuses a folder with something else in it, and a backup that `project` does not go on from.
    void requireOwn(storage::Database &project, Time now);
    /// Whether the database that `requireOwn` found there is damaged.
    bool isDamaged() const { return m_isDamaged; }
    /// Makes the folder where it is not there, and takes the right to write to it.
    void take(std::string_view projectName, Time now);
    /// Copies `database` beside the one that is there, and checks the copy; the destructor removes
    /// it unless it is settled.
    std::filesystem::path bring(storage::Database &database) const;
    /// Puts what was brought in the place of the database before, which becomes one of the copies.
    /// Where it is damaged, it is kept among them under a name that nothing removes; returns this.
    std::filesystem::path settle(const std::filesystem::path &brought) const;
    /// What a person still has when a backup was not finished; ends a sentence.
    Message whatStays(const Report &report) const;

private:
    /// Makes the database that is there one of the copies; false when it is damaged.
    bool keepBefore() const;

    storage::ProjectFolder m_folder;
    bool m_isDamaged = false;
    std::unique_ptr<storage::WriterLock> m_lock;
};

/// Refuses `inner` when it lies inside `outer`, or is it.
void requireApart(const std::filesystem::path &outer, const std::filesystem::path &inner);

} // namespace lastrivet::backup
