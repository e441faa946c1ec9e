// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/backup/Backup.h"
#include "core/records/Records.h"

namespace lastrivet::backup {

/// Copies the files that records name from one project folder to another: durably, only those that
/// are not there yet, each read back and compared. Notes in `report` what became of them.
void copyFiles(const Records &records, const std::filesystem::path &from,
               const std::filesystem::path &to, Report &report, const OnProgress &onProgress,
               std::stop_token stop);

} // namespace lastrivet::backup
