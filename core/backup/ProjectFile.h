// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"
#include "core/storage/Database.h"

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

namespace lastrivet::backup {

/// A photograph, video or paper in a project's folder.
struct ProjectFile {
    /// Its place in the folder.
    std::string name;
    /// 64 hex digits as taken in; empty when no record knows it.
    std::string sha256;
    /// As taken in, else as it is now.
    std::uint64_t bytes = 0;
};

/// The files that records name, and every other that lies in the folder's photographs and
/// documents, with the log and lists beside the database.
std::vector<ProjectFile> allFiles(const Records &records, const std::filesystem::path &project);
/// The files that records name, and those that the journal ever named, which undo may bring back.
std::vector<ProjectFile> namedFiles(const Records &records, storage::Database &database,
                                    const std::filesystem::path &project);

} // namespace lastrivet::backup
