// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/WriterLock.h"

#include "core/base/Error.h"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <charconv>
#include <cstring>
#include <fmt/format.h>
#include <fstream>

namespace lastrivet::storage {

namespace {

std::string hostName()
{
    std::array<char, 256> name{};
    ::gethostname(name.data(), name.size() - 1);
    return name.front() ? name.data() : "unknown";
}

} // namespace

std::unique_ptr<WriterLock> WriterLock::take(const std::filesystem::path &file,
                                             std::chrono::sys_time<std::chrono::milliseconds> now)
{
    const int descriptor = ::open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0666);
    if (descriptor < 0)
        throw NotWritable(
            fmt::format("{} cannot be written: {}.", file.string(), std::strerror(errno)));
    std::unique_ptr<WriterLock> lock(new WriterLock(descriptor));
    if (::flock(descriptor, LOCK_EX | LOCK_NB) != 0) {
        if (errno == EWOULDBLOCK)
            return nullptr;
        throw NotWritable(
            fmt::format("{} cannot be locked: {}.", file.string(), std::strerror(errno)));
    }
    const auto text =
        fmt::format("{} {} {}\n", ::getpid(), now.time_since_epoch().count(), hostName());
    if (::ftruncate(descriptor, 0) != 0 ||
        ::pwrite(descriptor, text.data(), text.size(), 0) != ssize_t(text.size()))
        throw NotSaved(
            fmt::format("{} could not be written: {}.", file.string(), std::strerror(errno)));
    return lock;
}

std::optional<WriterLock::Holder> WriterLock::holder(const std::filesystem::path &file)
{
    std::string process;
    std::string since;
    Holder holder;
    std::ifstream stream(file);
    if (!(stream >> process >> since >> holder.host))
        return std::nullopt;
    std::int64_t milliseconds = 0;
    std::from_chars(process.data(), process.data() + process.size(), holder.process);
    std::from_chars(since.data(), since.data() + since.size(), milliseconds);
    holder.since =
        std::chrono::sys_time<std::chrono::milliseconds>{std::chrono::milliseconds{milliseconds}};
    return holder;
}

WriterLock::~WriterLock()
{
    // The file stays: a latecomer may be waiting at the very file that a removal would take away.
    ::close(m_file);
}

} // namespace lastrivet::storage
