// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/faults/disk/Operation.h"

#include <sys/types.h>

#include <map>
#include <mutex>
#include <optional>
#include <string>
#include <utility>

namespace lastrivet::faults {

/// Stands between this program and a folder while it lives: keeps a list of everything that is
/// done to the files in it, whoever does it (SQLite, the standard library, our own code), and can
/// let it fail. One at a time.
class Disk {
public:
    enum class Failing { Once, FromThenOn };

    /// What the folder holds already is at the head of the list, as if it were on the disk itself.
    explicit Disk(const std::filesystem::path &folder);
    ~Disk();
    Disk(const Disk &) = delete;
    Disk &operator=(const Disk &) = delete;

    const std::vector<Operation> &log() const { return m_log; }
    void mark(std::uint64_t number);
    /// Watches no more; the list stays.
    void stop();
    /// A disk that only says that it synced what lies in folders of this name.
    void ignoreSyncsIn(std::string folder) { m_ignored = std::move(folder); }

    /// The operation after `more` others fails with that errno.
    void failAfter(int more, int error, Failing failing = Failing::Once);
    void failNever();
    bool hasFailed() const { return m_hasFailed; }

    /// For the calls of the C library: the one that watches now, or null.
    static Disk *watching();
    /// A path as it is inside the folder; empty when it is not.
    std::optional<std::filesystem::path> inside(const std::filesystem::path &path) const;
    std::optional<std::filesystem::path> inside(int descriptor) const;
    /// The errno with which the next operation is to fail; 0: it succeeds.
    int failure();
    void made(Operation::Kind kind, const std::filesystem::path &path, ino_t inode);
    void wrote(ino_t inode, std::uint64_t at, const void *bytes, std::size_t count);
    void resized(ino_t inode, std::uint64_t size);
    void synced(const std::filesystem::path &path, ino_t inode);
    void renamed(const std::filesystem::path &from, const std::filesystem::path &to);
    void removed(const std::filesystem::path &path);

private:
    int nodeOf(ino_t inode) const;
    void noteTree();

    std::filesystem::path m_folder;
    std::mutex m_mutex;
    std::vector<Operation> m_log;
    std::map<ino_t, int> m_nodes;
    int m_lastNode = 0;
    int m_operations = 0;
    int m_failAt = -1;
    int m_error = 0;
    Failing m_failing = Failing::Once;
    bool m_hasFailed = false;
    std::string m_ignored;
};

} // namespace lastrivet::faults
