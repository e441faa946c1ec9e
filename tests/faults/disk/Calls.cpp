// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later

// The calls of the C library that change files. A program's own definition of them is found before
// the library's by everything it is linked with, SQLite and the standard library among it. Each
// asks the kernel directly; while a disk is watched it is told, and may say that the call fails.
#include "tests/faults/disk/Disk.h"

#include <dlfcn.h>
#include <fcntl.h>
#include <sys/sendfile.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/uio.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <cstdarg>
#include <cstdio>
#include <cstring>
#include <string>

namespace {

namespace fs = std::filesystem;
using lastrivet::faults::Disk;
using lastrivet::faults::Operation;

struct Target {
    Disk *disk = nullptr;
    fs::path path;
    explicit operator bool() const { return disk; }
};

template <class Where> Target targetOf(const Where &where)
{
    if (Disk *disk = Disk::watching()) {
        if (auto path = disk->inside(where))
            return {disk, *path};
    }
    return {};
}

fs::path at(int folder, const char *name)
{
    if (folder == AT_FDCWD || *name == '/')
        return name;
    return fs::read_symlink("/proc/self/fd/" + std::to_string(folder)) / name;
}

/// Sets errno and answers true when the operation is to fail.
bool fails(const Target &target)
{
    const int error = target ? target.disk->failure() : 0;
    if (error)
        errno = error;
    return error;
}

struct stat statusOf(int descriptor)
{
    struct stat status {};
    ::fstat(descriptor, &status);
    return status;
}

bool isThere(const fs::path &path, struct stat &status)
{
    return ::lstat(path.c_str(), &status) == 0;
}

int openFile(int folder, const char *name, int flags, mode_t mode)
{
    const fs::path place = at(folder, name);
    const Target target = flags & (O_CREAT | O_TRUNC) ? targetOf(place) : Target{};
    struct stat before {};
    const bool wasThere = target && isThere(place, before);
    const bool changes = target && (!wasThere || (flags & O_TRUNC && before.st_size > 0));
    if (changes && fails(target))
        return -1;
    const int descriptor = int(::syscall(SYS_openat, folder, name, flags, mode));
    if (descriptor < 0 || !changes)
        return descriptor;
    const auto inode = statusOf(descriptor).st_ino;
    if (wasThere)
        target.disk->resized(inode, 0);
    else
        target.disk->made(Operation::Kind::Make, target.path, inode);
    return descriptor;
}

ssize_t writeAt(int file, const void *bytes, std::size_t count, off_t offset)
{
    const Target target = targetOf(file);
    const bool isFailing = fails(target);
    const int error = errno;
    // A write that fails has often reached the disk in part.
    const auto done = ::syscall(SYS_pwrite64, file, bytes, isFailing ? count / 2 : count, offset);
    if (target && done > 0)
        target.disk->wrote(statusOf(file).st_ino, std::uint64_t(offset), bytes, std::size_t(done));
    if (!isFailing)
        return done;
    errno = error;
    return -1;
}

ssize_t writeOn(int file, const void *bytes, std::size_t count)
{
    if (!targetOf(file))
        return ::syscall(SYS_write, file, bytes, count);
    const bool appends = ::fcntl(file, F_GETFL) & O_APPEND;
    const off_t offset = ::lseek(file, 0, appends ? SEEK_END : SEEK_CUR);
    const ssize_t done = writeAt(file, bytes, count, offset);
    if (done > 0)
        ::lseek(file, offset + done, SEEK_SET);
    return done;
}

int resize(int file, off_t size)
{
    const Target target = targetOf(file);
    if (fails(target))
        return -1;
    const int result = int(::syscall(SYS_ftruncate, file, size));
    if (target && result == 0)
        target.disk->resized(statusOf(file).st_ino, std::uint64_t(size));
    return result;
}

int sync(long call, int file)
{
    const Target target = targetOf(file);
    if (fails(target))
        return -1;
    const int result = int(::syscall(call, file));
    if (target && result == 0)
        target.disk->synced(target.path, statusOf(file).st_ino);
    return result;
}

int move(const fs::path &from, const fs::path &to, unsigned flags)
{
    const Target source = targetOf(from);
    const Target target = targetOf(to);
    if (fails(target))
        return -1;
    const int result =
        int(::syscall(SYS_renameat2, AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), flags));
    if (source && target && result == 0)
        target.disk->renamed(source.path, target.path);
    return result;
}

int removeAt(int folder, const char *name, int flags)
{
    const Target target = targetOf(at(folder, name));
    struct stat status {};
    if (target && isThere(at(folder, name), status) && fails(target))
        return -1;
    const int result = int(::syscall(SYS_unlinkat, folder, name, flags));
    if (target && result == 0)
        target.disk->removed(target.path);
    return result;
}

int makeFolder(const char *path, mode_t mode)
{
    const Target target = targetOf(path);
    struct stat status {};
    if (target && !isThere(path, status) && fails(target))
        return -1;
    const int result = int(::syscall(SYS_mkdirat, AT_FDCWD, path, mode));
    if (target && result == 0 && isThere(path, status))
        target.disk->made(Operation::Kind::MakeFolder, target.path, status.st_ino);
    return result;
}

/// Replaces the six X at the end until `make` finds the name free.
template <class Make> int withFreeName(char *pattern, Make &&make)
{
    static std::atomic<unsigned> count{unsigned(::getpid()) * 4096u};
    char *end = pattern + std::strlen(pattern) - 6;
    for (int result = -1;;) {
        std::string digits = "00000" + std::to_string(++count);
        std::memcpy(end, digits.data() + digits.size() - 6, 6);
        result = make();
        if (result >= 0 || errno != EEXIST)
            return result;
    }
}

mode_t modeIn(int flags, va_list arguments)
{
    return flags & (O_CREAT | O_TMPFILE) ? va_arg(arguments, mode_t) : 0;
}

} // namespace

extern "C" {

int open(const char *path, int flags, ...)
{
    va_list arguments;
    va_start(arguments, flags);
    const mode_t mode = modeIn(flags, arguments);
    va_end(arguments);
    return openFile(AT_FDCWD, path, flags, mode);
}

int open64(const char *path, int flags, ...)
{
    va_list arguments;
    va_start(arguments, flags);
    const mode_t mode = modeIn(flags, arguments);
    va_end(arguments);
    return openFile(AT_FDCWD, path, flags, mode);
}

int openat(int folder, const char *path, int flags, ...)
{
    va_list arguments;
    va_start(arguments, flags);
    const mode_t mode = modeIn(flags, arguments);
    va_end(arguments);
    return openFile(folder, path, flags, mode);
}

FILE *fopen(const char *path, const char *mode)
{
    const bool isRead = mode[0] == 'r';
    const int access = std::strchr(mode, '+') ? O_RDWR : isRead ? O_RDONLY : O_WRONLY;
    const int making = isRead ? 0 : O_CREAT | (mode[0] == 'a' ? O_APPEND : O_TRUNC);
    const int file = openFile(AT_FDCWD, path, access | making, 0666);
    return file < 0 ? nullptr : ::fdopen(file, mode);
}

FILE *fopen64(const char *path, const char *mode)
{
    return fopen(path, mode);
}

std::size_t fwrite(const void *bytes, std::size_t size, std::size_t count, FILE *file)
{
    using Call = std::size_t (*)(const void *, std::size_t, std::size_t, FILE *);
    static const auto library = reinterpret_cast<Call>(::dlsym(RTLD_NEXT, "fwrite"));
    if (fails(targetOf(::fileno(file))))
        return 0;
    return library(bytes, size, count, file);
}

int mkostemp(char *pattern, int flags)
{
    return withFreeName(pattern, [&] {
        return openFile(AT_FDCWD, pattern, flags | O_RDWR | O_CREAT | O_EXCL, 0600);
    });
}

int mkstemp(char *pattern)
{
    return mkostemp(pattern, 0);
}

char *mkdtemp(char *pattern) noexcept
{
    return withFreeName(pattern, [&] { return makeFolder(pattern, 0700); }) < 0 ? nullptr : pattern;
}

ssize_t write(int file, const void *bytes, std::size_t count)
{
    return writeOn(file, bytes, count);
}

ssize_t writev(int file, const iovec *parts, int count)
{
    ssize_t done = 0;
    for (int i = 0; i < count; ++i) {
        const ssize_t written = writeOn(file, parts[i].iov_base, parts[i].iov_len);
        if (written < 0)
            return done > 0 ? done : written;
        done += written;
        if (std::size_t(written) < parts[i].iov_len)
            break;
    }
    return done;
}

ssize_t pwrite(int file, const void *bytes, std::size_t count, off_t offset)
{
    return writeAt(file, bytes, count, offset);
}

ssize_t pwrite64(int file, const void *bytes, std::size_t count, off64_t offset)
{
    return writeAt(file, bytes, count, offset);
}

ssize_t sendfile(int to, int from, off_t *offset, std::size_t count) noexcept
{
    // Whoever copies this way falls back to writing, which is seen.
    if (targetOf(to)) {
        errno = EINVAL;
        return -1;
    }
    return ::syscall(SYS_sendfile, to, from, offset, count);
}

int ftruncate(int file, off_t size) noexcept
{
    return resize(file, size);
}

int ftruncate64(int file, off64_t size) noexcept
{
    return resize(file, size);
}

int fsync(int file)
{
    return sync(SYS_fsync, file);
}

int fdatasync(int file)
{
    return sync(SYS_fdatasync, file);
}

int rename(const char *from, const char *to) noexcept
{
    return move(from, to, 0);
}

int renameat2(int fromFolder, const char *from, int toFolder, const char *to,
              unsigned flags) noexcept
{
    return move(at(fromFolder, from), at(toFolder, to), flags);
}

int unlink(const char *path) noexcept
{
    return removeAt(AT_FDCWD, path, 0);
}

int unlinkat(int folder, const char *path, int flags) noexcept
{
    return removeAt(folder, path, flags);
}

int rmdir(const char *path) noexcept
{
    return removeAt(AT_FDCWD, path, AT_REMOVEDIR);
}

int remove(const char *path) noexcept
{
    struct stat status {};
    return removeAt(AT_FDCWD, path,
                    isThere(path, status) && S_ISDIR(status.st_mode) ? AT_REMOVEDIR : 0);
}

int mkdir(const char *path, mode_t mode) noexcept
{
    return makeFolder(path, mode);
}
}
