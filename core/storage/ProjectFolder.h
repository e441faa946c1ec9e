// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/Database.h"

#include <cstdint>
#include <filesystem>
#include <string_view>

namespace lastrivet::storage {

/// The paths within a project's folder.
class ProjectFolder {
public:
    explicit ProjectFolder(std::filesystem::path root);

    const std::filesystem::path &root() const { return m_root; }
    std::filesystem::path database() const { return m_root / "records.db"; }
    std::filesystem::path lock() const { return m_root / "records.lock"; }
    std::filesystem::path photos() const { return m_root / "photos"; }
    std::filesystem::path documents() const { return m_root / "documents"; }
    std::filesystem::path backups() const { return m_root / "backups"; }
    std::filesystem::path readMe() const { return m_root / "READ-ME-FIRST.txt"; }

    /// Throws `NotWritable` when something is there already; an empty folder may be.
    void requireFree() const;
    /// Makes the folder, its subfolders and the page for whoever finds it.
    void make(std::string_view projectName) const;
    /// Removes what `make` and the making of a database left behind; a folder that was there
    /// before stays, empty as it was.
    void unmake(bool wasThere) const noexcept;
    /// True when this program may change the folder and the database in it.
    bool isWritable() const;
    Database::Safety safety() const;

private:
    std::filesystem::path m_root;
};

/// Whether file systems of this kind (`f_type` of statfs) may lie on another computer, so that
/// programs share no memory through their files. FUSE counts: nobody can tell what is behind it.
bool isNetwork(std::uint32_t fileSystem);

/// Flushes a folder's entries to the disk, so that files made in it survive a power cut.
void syncFolder(const std::filesystem::path &folder);
/// Flushes a file's content to the disk.
void syncFile(const std::filesystem::path &file);

} // namespace lastrivet::storage
