// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/faults/disk/Operation.h"

#include <map>
#include <random>
#include <string>

namespace lastrivet::faults {

/// How much of what was not synced a power cut takes.
enum class Loss {
    All,
    Some,    ///< each write, name and length by itself, in any order
    Sectors, ///< and of a write some sectors of 512 bytes
};

/// What lies on a disk for certain, and what is only on its way there: POSIX promises no more of
/// a file's bytes than its last sync, and no more of a name than the last sync of its folder.
class Medium {
public:
    /// Operations in their order; they outlive it.
    void take(const Operation &operation);
    /// Writes what is there after a power cut into an empty folder.
    void writeAfterCut(Loss loss, std::mt19937 &random, const std::filesystem::path &folder) const;

private:
    using Names = std::map<std::string, int>;
    using Bytes = std::vector<std::uint8_t>;
    struct Node {
        bool isFolder = false;
        Bytes bytes;
        Names names;
        std::vector<const Operation *> pending;
    };
    class Cut;

    static void apply(const Operation &operation, Bytes &bytes);
    static void apply(const Operation &operation, Names &names);
    int folderOf(const std::filesystem::path &path) const;
    int nodeAt(const std::filesystem::path &path) const;

    std::map<int, Node> m_nodes;
    /// The names as the running program sees them.
    std::map<int, Names> m_seen;
    int m_root = 0;
};

} // namespace lastrivet::faults
