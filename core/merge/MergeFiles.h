// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <filesystem>
#include <string>
#include <vector>

namespace lastrivet::merge {

/// A copy of a project: its folder, and what it knows of the files there.
struct CopyOfProject {
    std::filesystem::path folder;
    const Records *records;
};

/// What became of the files of a merge.
struct BroughtFiles {
    std::size_t copied = 0;
    /// New files, as records name them, that neither copy has whole.
    std::vector<std::string> missing;
};

/// Copies into `mine` what `merged` names and is not there, durably and only with the sum that the
/// record gives. Nothing is overwritten. Throws `Fault` when the disk does not take it.
BroughtFiles bringFiles(const Records &merged, const CopyOfProject &mine,
                        const CopyOfProject &other);

} // namespace lastrivet::merge
