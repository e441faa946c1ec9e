// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/backup/Backup.h"
#include "core/backup/ProjectFile.h"

namespace lastrivet::backup {

/// What becomes of a file of the target that is not what the project has: a copy of that takes its
/// place, or it is given another name before.
enum class Differing { Replace, SetAside };

/// Copies files from one project folder to another: durably, only those that are not there yet,
/// each read back from the disk before it gets its name. Notes in `report` what became of them.
///
/// False when `onProgress` ended it. Throws `NotSaved` when the target cannot be written; a file
/// that cannot be read is noted, and the others are copied.
bool copyFiles(const std::vector<ProjectFile> &files, const std::filesystem::path &from,
               const std::filesystem::path &to, Reading reading, Differing differing,
               Report &report, const OnProgress &onProgress);

} // namespace lastrivet::backup
