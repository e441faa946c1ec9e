// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/disk/Disk.h"

#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <atomic>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <string>

namespace lastrivet::faults {

namespace fs = std::filesystem;

namespace {

std::atomic<Disk *> watcher{nullptr};

ino_t inodeOf(const fs::path &path)
{
    struct stat status {};
    if (::lstat(path.c_str(), &status) != 0)
        throw std::runtime_error(path.string() + " is not there");
    return status.st_ino;
}

std::vector<std::uint8_t> bytesOf(const fs::path &file)
{
    std::ifstream stream(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

} // namespace

Disk::Disk(const fs::path &folder)
    : m_folder(fs::canonical(folder))
{
    noteTree();
    if (watcher.exchange(this))
        throw std::logic_error("two disks are watched at once");
}

Disk::~Disk()
{
    stop();
}

void Disk::stop()
{
    Disk *self = this;
    watcher.compare_exchange_strong(self, nullptr);
}

Disk *Disk::watching()
{
    return watcher;
}

void Disk::noteTree()
{
    made(Operation::Kind::MakeFolder, {}, inodeOf(m_folder));
    for (const auto &entry : fs::recursive_directory_iterator(m_folder)) {
        const auto inode = inodeOf(entry.path());
        const auto path = entry.path().lexically_relative(m_folder);
        made(entry.is_directory() ? Operation::Kind::MakeFolder : Operation::Kind::Make, path,
             inode);
        if (!entry.is_regular_file())
            continue;
        const auto bytes = bytesOf(entry.path());
        wrote(inode, 0, bytes.data(), bytes.size());
    }
    for (const auto &known : m_nodes)
        m_log.push_back({.kind = Operation::Kind::Sync, .node = known.second});
}

void Disk::mark(std::uint64_t number)
{
    const std::scoped_lock lock(m_mutex);
    m_log.push_back({.kind = Operation::Kind::Mark, .at = number});
}

void Disk::failAfter(int more, int error, Failing failing)
{
    m_hasFailed = false;
    m_failAt = m_operations + 1 + more;
    m_error = error;
    m_failing = failing;
}

void Disk::failNever()
{
    m_failAt = -1;
}

int Disk::failure()
{
    const std::scoped_lock lock(m_mutex);
    ++m_operations;
    const bool isDue = m_failAt >= 0 && (m_failing == Failing::Once ? m_operations == m_failAt
                                                                    : m_operations >= m_failAt);
    m_hasFailed = m_hasFailed || isDue;
    return isDue ? m_error : 0;
}

std::optional<fs::path> Disk::inside(const fs::path &path) const
{
    const auto relative = fs::path(path.is_absolute() ? path : fs::current_path() / path)
                              .lexically_normal()
                              .lexically_relative(m_folder);
    if (relative.empty() || *relative.begin() == "..")
        return std::nullopt;
    return relative;
}

std::optional<fs::path> Disk::inside(int descriptor) const
{
    std::array<char, 4096> name{};
    const auto link = "/proc/self/fd/" + std::to_string(descriptor);
    const auto length = ::readlink(link.c_str(), name.data(), name.size());
    if (length <= 0 || name.front() != '/')
        return std::nullopt;
    return inside(fs::path(std::string(name.data(), std::size_t(length))));
}

int Disk::nodeOf(ino_t inode) const
{
    const auto known = m_nodes.find(inode);
    if (known == m_nodes.end())
        throw std::logic_error("a file came into being unseen");
    return known->second;
}

void Disk::made(Operation::Kind kind, const fs::path &path, ino_t inode)
{
    const std::scoped_lock lock(m_mutex);
    m_nodes[inode] = ++m_lastNode;
    m_log.push_back({.kind = kind, .node = m_lastNode, .path = path});
}

void Disk::wrote(ino_t inode, std::uint64_t at, const void *bytes, std::size_t count)
{
    const std::scoped_lock lock(m_mutex);
    const auto *first = static_cast<const std::uint8_t *>(bytes);
    m_log.push_back({.kind = Operation::Kind::Write,
                     .node = nodeOf(inode),
                     .at = at,
                     .bytes = {first, first + count}});
}

void Disk::resized(ino_t inode, std::uint64_t size)
{
    const std::scoped_lock lock(m_mutex);
    m_log.push_back({.kind = Operation::Kind::Resize, .node = nodeOf(inode), .at = size});
}

void Disk::synced(const fs::path &path, ino_t inode)
{
    if (std::find(path.begin(), path.end(), m_ignored) != path.end())
        return;
    const std::scoped_lock lock(m_mutex);
    m_log.push_back({.kind = Operation::Kind::Sync, .node = nodeOf(inode)});
}

void Disk::renamed(const fs::path &from, const fs::path &to)
{
    const std::scoped_lock lock(m_mutex);
    struct stat status {};
    ::lstat((m_folder / to).c_str(), &status);
    m_log.push_back(
        {.kind = Operation::Kind::Rename, .node = nodeOf(status.st_ino), .path = from, .to = to});
}

void Disk::removed(const fs::path &path)
{
    const std::scoped_lock lock(m_mutex);
    m_log.push_back({.kind = Operation::Kind::Remove, .path = path});
}

} // namespace lastrivet::faults
