// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <cstddef>
#include <filesystem>
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

/// Writes the whole project as one ZIP archive: the interchange document `records.json`, every file
/// of photographs and papers under its name, and `SHA256SUMS`, a manifest of all of them as
/// `sha256sum -c` reads it. Unpacked, `records.json` can be imported with its files.
///
/// An archive that was there stays whole until the new one is. Throws `Fault`s.
ArchiveReport writeArchive(const Records &records, const std::filesystem::path &projectFolder,
                           const std::filesystem::path &file);

} // namespace lastrivet::exchange
