// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/files/SourceFile.h"

#include "core/base/WriteFailure.h"
#include "core/evidence/MediaFile.h"
#include "core/evidence/files/FileFault.h"

#include <fcntl.h>
#include <sys/stat.h>

#include <cerrno>

namespace lastrivet::evidence {

namespace {

[[noreturn]] void throwUnreadable(const std::string &name)
{
    throw FileFault({"{0} could not be read: {1}.", {name, whyNotRead(errno)}});
}

std::int64_t nanoseconds(const timespec &time)
{
    return std::int64_t{time.tv_sec} * 1'000'000'000 + time.tv_nsec;
}

} // namespace

SourceFile::SourceFile(const std::filesystem::path &path)
    : m_name(shownName(path))
    // O_NONBLOCK: opening a pipe without a writer would wait for ever.
    , m_file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NOCTTY | O_NONBLOCK))
{
    struct stat status {};
    if (!m_file || ::fstat(m_file.number(), &status) != 0)
        throwUnreadable(m_name);
    if (!S_ISREG(status.st_mode))
        throw FileFault({"{0} is not a file.", {m_name}});
    m_size = std::uint64_t(status.st_size);
    m_changed = nanoseconds(status.st_mtim);
}

std::size_t SourceFile::readAt(std::uint64_t offset, std::span<std::uint8_t> bytes) const
{
    std::size_t done = 0;
    while (done < bytes.size()) {
        const auto got = ::pread(m_file.number(), bytes.data() + done, bytes.size() - done,
                                 off_t(offset + done));
        if (got < 0 && errno == EINTR)
            continue;
        if (got < 0)
            throwUnreadable(m_name);
        if (got == 0)
            break;
        done += std::size_t(got);
    }
    return done;
}

Bytes SourceFile::readAll() const
{
    Bytes bytes(m_size);
    if (readAt(0, {bytes.data(), bytes.size()}) != m_size)
        throw FileFault({"{0} became shorter while it was read.", {m_name}});
    return bytes;
}

void SourceFile::requireUnchanged() const
{
    struct stat status {};
    if (::fstat(m_file.number(), &status) != 0)
        throwUnreadable(m_name);
    if (std::uint64_t(status.st_size) != m_size || nanoseconds(status.st_mtim) != m_changed)
        throw FileFault(
            {"{0} changed while it was read; try again when it has arrived.", {m_name}});
}

} // namespace lastrivet::evidence
