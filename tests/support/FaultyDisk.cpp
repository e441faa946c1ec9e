// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/FaultyDisk.h"

#include <sqlite3.h>
#include <stdexcept>

namespace lastrivet::test {

namespace {

// As SQLite's own test shims do it: a file is a pair of the shim and, behind it, the real one.
struct ShimFile {
    sqlite3_file base;
    sqlite3_file *real;
};

struct State {
    sqlite3_vfs *disk = nullptr;
    sqlite3_vfs shim{};
    int operations = 0;
    int syncs = 0;
    int failAt = -1;
    bool failed = false;
};
State state;

sqlite3_file *real(sqlite3_file *file)
{
    return reinterpret_cast<ShimFile *>(file)->real;
}

bool fails()
{
    if (++state.operations != state.failAt)
        return false;
    state.failed = true;
    return true;
}

const sqlite3_io_methods methods{
    3,
    [](sqlite3_file *f) { return real(f)->pMethods->xClose(real(f)); },
    [](sqlite3_file *f, void *to, int n, sqlite3_int64 at) {
        return real(f)->pMethods->xRead(real(f), to, n, at);
    },
    [](sqlite3_file *f, const void *from, int n, sqlite3_int64 at) {
        return fails() ? SQLITE_IOERR_WRITE : real(f)->pMethods->xWrite(real(f), from, n, at);
    },
    [](sqlite3_file *f, sqlite3_int64 size) {
        return fails() ? SQLITE_IOERR_TRUNCATE : real(f)->pMethods->xTruncate(real(f), size);
    },
    [](sqlite3_file *f, int flags) {
        ++state.syncs;
        return fails() ? SQLITE_IOERR_FSYNC : real(f)->pMethods->xSync(real(f), flags);
    },
    [](sqlite3_file *f, sqlite3_int64 *size) {
        return real(f)->pMethods->xFileSize(real(f), size);
    },
    [](sqlite3_file *f, int lock) { return real(f)->pMethods->xLock(real(f), lock); },
    [](sqlite3_file *f, int lock) { return real(f)->pMethods->xUnlock(real(f), lock); },
    [](sqlite3_file *f, int *out) { return real(f)->pMethods->xCheckReservedLock(real(f), out); },
    [](sqlite3_file *f, int op, void *arg) {
        return real(f)->pMethods->xFileControl(real(f), op, arg);
    },
    [](sqlite3_file *f) { return real(f)->pMethods->xSectorSize(real(f)); },
    [](sqlite3_file *f) { return real(f)->pMethods->xDeviceCharacteristics(real(f)); },
    [](sqlite3_file *f, int page, int size, int extend, void volatile **out) {
        return real(f)->pMethods->xShmMap(real(f), page, size, extend, out);
    },
    [](sqlite3_file *f, int offset, int n, int flags) {
        return real(f)->pMethods->xShmLock(real(f), offset, n, flags);
    },
    [](sqlite3_file *f) { real(f)->pMethods->xShmBarrier(real(f)); },
    [](sqlite3_file *f, int remove) { return real(f)->pMethods->xShmUnmap(real(f), remove); },
    [](sqlite3_file *f, sqlite3_int64 at, int n, void **out) {
        return real(f)->pMethods->xFetch(real(f), at, n, out);
    },
    [](sqlite3_file *f, sqlite3_int64 at, void *page) {
        return real(f)->pMethods->xUnfetch(real(f), at, page);
    },
};

int open(sqlite3_vfs *, const char *name, sqlite3_file *file, int flags, int *out)
{
    auto *shim = reinterpret_cast<ShimFile *>(file);
    shim->real = reinterpret_cast<sqlite3_file *>(shim + 1);
    const int code = state.disk->xOpen(state.disk, name, shim->real, flags, out);
    file->pMethods = shim->real->pMethods ? &methods : nullptr;
    return code;
}

} // namespace

FaultyDisk::FaultyDisk()
{
    state = {};
    state.disk = sqlite3_vfs_find(nullptr);
    if (!state.disk)
        throw std::runtime_error("SQLite has no disk");
    state.shim = *state.disk;
    state.shim.zName = "faulty";
    state.shim.pNext = nullptr;
    state.shim.szOsFile = int(sizeof(ShimFile)) + state.disk->szOsFile;
    state.shim.xOpen = open;
    sqlite3_vfs_register(&state.shim, 1);
}

FaultyDisk::~FaultyDisk()
{
    sqlite3_vfs_unregister(&state.shim);
    sqlite3_vfs_register(state.disk, 1);
}

int FaultyDisk::operations() const
{
    return state.operations;
}

int FaultyDisk::syncs() const
{
    return state.syncs;
}

void FaultyDisk::failAfter(int more)
{
    state.failed = false;
    state.failAt = state.operations + 1 + more;
}

void FaultyDisk::failNever()
{
    state.failAt = -1;
}

bool FaultyDisk::hasFailed() const
{
    return state.failed;
}

} // namespace lastrivet::test
