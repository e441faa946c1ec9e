// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/storage/WriterLock.h"

#include "core/base/WriteFailure.h"

#include <fcntl.h>
#include <pwd.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <charconv>
#include <csignal>
#include <cstring>
#include <fmt/format.h>
#include <fstream>
#include <spdlog/spdlog.h>
#include <sstream>
#include <thread>

namespace lastrivet::storage {

namespace {

using Time = std::chrono::sys_time<std::chrono::milliseconds>;

std::string hostName()
{
    std::array<char, 256> name{};
    ::gethostname(name.data(), name.size() - 1);
    return name.front() ? name.data() : "unknown";
}

std::string userName()
{
    std::array<char, 4096> room{};
    struct passwd entry {};
    struct passwd *found = nullptr;
    ::getpwuid_r(::geteuid(), &entry, room.data(), room.size(), &found);
    return found ? found->pw_name : "";
}

std::int64_t number(const std::string &text)
{
    std::int64_t value = 0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

std::optional<WriterLock::Holder> read(const std::filesystem::path &file)
{
    WriterLock::Holder holder;
    std::string line;
    std::string process;
    std::string since;
    std::ifstream stream(file);
    std::getline(stream, line);
    std::istringstream words(line);
    if (!(words >> process >> since >> holder.host))
        return std::nullopt;
    words >> holder.user;
    holder.process = number(process);
    holder.since = Time{std::chrono::milliseconds{number(since)}};
    return holder;
}

/// A program that was killed leaves its text in the file, but no lock.
bool isGone(const WriterLock::Holder &holder)
{
    return holder.process > 0 && holder.host == hostName() &&
           ::kill(::pid_t(holder.process), 0) != 0 && errno == ESRCH;
}

bool isWithoutLocks(int reason)
{
    return reason == ENOLCK || reason == EOPNOTSUPP || reason == ENOSYS || reason == EINVAL;
}

/// Somebody may have removed the file between opening and locking it.
bool leadsTo(const std::filesystem::path &file, int descriptor)
{
    struct stat there {};
    struct stat locked {};
    return ::stat(file.c_str(), &there) == 0 && ::fstat(descriptor, &locked) == 0 &&
           there.st_dev == locked.st_dev && there.st_ino == locked.st_ino;
}

} // namespace

std::unique_ptr<WriterLock> WriterLock::take(const std::filesystem::path &file, Time now)
{
    const int descriptor = ::open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0666);
    if (descriptor < 0)
        throw NotWritable(
            Message{"{0} cannot be written: {1}.", {file.string(), whyNotWritten(errno)}});
    if (::flock(descriptor, LOCK_EX | LOCK_NB) != 0) {
        const int reason = errno;
        ::close(descriptor);
        if (reason == EWOULDBLOCK)
            return nullptr;
        if (isWithoutLocks(reason))
            throw LocksUnknown(
                Message{"{0} cannot be locked: its file system has no locks.", {file.string()}});
        throw NotWritable(
            Message{"{0} cannot be locked: {1}.", {file.string(), whyDiskFailed(reason)}});
    }
    std::unique_ptr<WriterLock> lock(new WriterLock(descriptor));
    if (!leadsTo(file, descriptor))
        return take(file, now);
    lock->m_isAfterCrash = read(file).has_value();
    lock->signAs(fmt::format("{} {} {} {}\n", ::getpid(), now.time_since_epoch().count(),
                             hostName(), userName()));
    return lock;
}

void WriterLock::signAs(const std::string &text) const
{
    // The text is only for information; the lock holds without it, also on a full disk.
    if (::ftruncate(m_file, 0) != 0 ||
        ::pwrite(m_file, text.data(), text.size(), 0) != ssize_t(text.size()))
        spdlog::warn("the lock is not signed: {}", std::strerror(errno));
}

std::optional<WriterLock::Holder> WriterLock::holder(const std::filesystem::path &file)
{
    using namespace std::chrono_literals;
    // A program that has just taken the lock may not have written its own text yet.
    for (int tries = 0; tries < 20; ++tries) {
        if (auto found = read(file); found && !isGone(*found))
            return found;
        std::this_thread::sleep_for(10ms);
    }
    return std::nullopt;
}

bool WriterLock::isSignedByNobody(const std::filesystem::path &file)
{
    const auto found = read(file);
    return !found || isGone(*found);
}

WriterLock::~WriterLock()
{
    signAs({});
    // The file stays: another program may just be opening it, and would lock a removed file.
    ::close(m_file);
}

} // namespace lastrivet::storage
