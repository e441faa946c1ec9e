// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/ProjectFolder.h"

#include "core/base/WriteFailure.h"
#include "core/storage/ReadMe.h"

#include <fcntl.h>
#include <linux/magic.h>
#include <sys/vfs.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>

namespace lastrivet::storage {

namespace fs = std::filesystem;

namespace {

void sync(const fs::path &path, int flags)
{
    const int file = ::open(path.c_str(), flags | O_CLOEXEC);
    if (file < 0)
        throw NotSaved(
            Message{"{0} could not be written: {1}.", {path.string(), whyNotWritten(errno)}});
    const bool isSynced = ::fsync(file) == 0;
    const int reason = errno;
    ::close(file);
    // Some file systems cannot flush a folder, nor need to, and say so with EINVAL.
    if (!isSynced && reason != EINVAL)
        throw NotSaved(
            Message{"{0} could not be written: {1}.", {path.string(), whyNotWritten(reason)}});
}

bool mayWrite(const fs::path &path)
{
    return ::faccessat(AT_FDCWD, path.c_str(), W_OK, AT_EACCESS) == 0;
}

} // namespace

ProjectFolder::ProjectFolder(fs::path root)
    : m_root(std::move(root))
{
}

void ProjectFolder::requireFree() const
{
    // An empty path would mean the current folder, which would be filled and, after a fault,
    // emptied.
    if (m_root.empty())
        throw NotWritable("The folder of the project has no name.");
    std::error_code failure;
    // A dangling link belongs to somebody, too.
    if (fs::exists(fs::symlink_status(m_root, failure)) &&
        !(fs::is_directory(m_root, failure) && fs::is_empty(m_root, failure)))
        throw NotWritable(Message{"{0} exists already; choose another name.", {m_root.string()}});
}

void ProjectFolder::make(std::string_view projectName) const
{
    std::error_code failure;
    for (const auto &folder : {photos(), documents(), backups()}) {
        fs::create_directories(folder, failure);
        if (failure) {
            throw NotWritable(Message{"{0} could not be made: {1}.",
                                      {folder.string(), whyNotWritten(failure.value())}});
        }
    }
    writeReadMe(*this, projectName);
    const auto parent = fs::absolute(m_root).parent_path();
    syncFolder(parent);
}

void ProjectFolder::unmake(bool wasThere) const noexcept
{
    std::error_code failure;
    for (const auto &made :
         {photos(), documents(), backups(), readMe(), m_root / "photos-of-part.sql", lock(),
          database(), m_root / "records.db-wal", m_root / "records.db-shm",
          m_root / "records.db-journal"})
        fs::remove_all(made, failure);
    if (!wasThere)
        fs::remove(m_root, failure);
}

bool ProjectFolder::isWritable() const
{
    return mayWrite(m_root) && mayWrite(database());
}

Database::Safety ProjectFolder::safety() const
{
    struct statfs system {};
    if (::statfs(m_root.c_str(), &system) != 0)
        return Database::Safety::WriteAhead;
    return isNetwork(std::uint32_t(system.f_type)) ? Database::Safety::RollbackJournal
                                                   : Database::Safety::WriteAhead;
}

bool isNetwork(std::uint32_t fileSystem)
{
    static constexpr std::array<std::uint32_t, 13> networks{
        NFS_SUPER_MAGIC, SMB_SUPER_MAGIC, CIFS_SUPER_MAGIC, SMB2_SUPER_MAGIC, FUSE_SUPER_MAGIC,
        V9FS_MAGIC, AFS_SUPER_MAGIC, AFS_FS_MAGIC, CODA_SUPER_MAGIC, CEPH_SUPER_MAGIC,
        NCP_SUPER_MAGIC, OCFS2_SUPER_MAGIC,
        // GFS2, from statfs(2).
        0x01161970};
    return std::find(networks.begin(), networks.end(), fileSystem) != networks.end();
}

void syncFolder(const fs::path &folder)
{
    sync(folder, O_RDONLY | O_DIRECTORY);
}

void syncFile(const fs::path &file)
{
    sync(file, O_RDWR);
}

} // namespace lastrivet::storage
