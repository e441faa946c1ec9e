// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace lastrivet::test {

/// Stands between SQLite and the disk while it lives: counts what is written, and lets one write
/// fail. One at a time; made before the databases that it watches are opened.
class FaultyDisk {
public:
    FaultyDisk();
    ~FaultyDisk();
    FaultyDisk(const FaultyDisk &) = delete;
    FaultyDisk &operator=(const FaultyDisk &) = delete;

    /// Writes, truncations and syncs since the making.
    int operations() const;
    int syncs() const;
    /// The operation after that many more fails, once, with an input/output error; 0: the next.
    void failAfter(int more);
    void failNever();
    bool hasFailed() const;
};

} // namespace lastrivet::test
