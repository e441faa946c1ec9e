// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <vector>

namespace lastrivet::faults {

/// One thing that a program asked of the disk, and that the disk did.
struct Operation {
    enum class Kind {
        Make,
        MakeFolder,
        Write,
        Resize,
        Sync, ///< of a file: its bytes and length; of a folder: the names in it
        Rename,
        Remove,
        Mark, ///< nothing was asked; the program said that something is saved
    };

    Kind kind{};
    /// Names files and folders from their making on, whatever they are called.
    int node = 0;
    /// Relative to what is watched.
    std::filesystem::path path;
    /// After a renaming.
    std::filesystem::path to;
    /// Where a write begins; the length after a resizing; the number of a mark.
    std::uint64_t at = 0;
    std::vector<std::uint8_t> bytes;
};

} // namespace lastrivet::faults
