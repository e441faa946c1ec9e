// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace lastrivet::merge {

struct Decided;
struct MergedHistories;

/// A copy of a project: its folder, and what it knows of the files there.
struct CopyOfProject {
    std::filesystem::path folder;
    const Records *records;
};

/// What became of the files of a merge.
struct BroughtFiles {
    /// As records name them.
    std::vector<std::string> copied;
    /// Those of new records that lay there already; whoever copied them must not take them back.
    std::vector<std::string> found;
    /// New files, as records name them, that neither copy has whole.
    std::vector<std::string> missing;
};

/// Copies into `mine` what `merged` names and is not there, durably and only with the sum that the
/// record gives, and notes each in `brought`. Nothing is overwritten. `onFile` hears how many of
/// all were looked at; false when it stopped that. Throws `Fault` when the disk does not take it.
bool bringFiles(const MergedHistories &merged, const CopyOfProject &mine,
                const CopyOfProject &other, BroughtFiles &brought,
                const std::function<bool(std::size_t done, std::size_t total)> &onFile = {});

/// The same for photographs that a decision puts on record or gives another name: their files are
/// in the folder of `mine` already, and are copied to the name that the record has from now on.
void bringDecided(const Decided &decided, const CopyOfProject &mine, BroughtFiles &brought);

/// Removes what was copied into the folder, but nothing that a record names by now, and leaves what
/// was found there to those who copied it.
void takeBack(const std::filesystem::path &folder, const BroughtFiles &brought);

} // namespace lastrivet::merge
