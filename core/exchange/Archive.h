// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/ZipFile.h"

#include <chrono>
#include <cstddef>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet::exchange {

/// What went into an archive.
struct ArchiveReport {
    /// Photographs, videos and papers.
    std::size_t files = 0;
    /// Names of files that records speak of and that are not in the project.
    std::vector<std::string> missing;
    /// Files that are no longer what was taken in; they are in the archive as they are now.
    std::vector<std::string> altered;
};

/// Writes the whole project as one ZIP archive: the database with its journal, the interchange
/// document `records.json`, every file of photographs and papers under its name, and `SHA256SUMS`,
/// a manifest of all of them as `sha256sum -c` reads it. Unpacked it is a project folder.
///
/// An archive that was there stays whole until the new one is. Empty when `onProgress` ended it.
/// Throws `Fault`s.
std::optional<ArchiveReport> writeArchive(const std::filesystem::path &projectFolder,
                                          const std::filesystem::path &file,
                                          std::chrono::sys_time<std::chrono::milliseconds> now,
                                          const ZipFile::OnProgress &onProgress = {});

} // namespace lastrivet::exchange
