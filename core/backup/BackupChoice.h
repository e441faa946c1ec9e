// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/backup/LastBackup.h"
#include "core/base/Moment.h"

#include <filesystem>
#include <optional>

namespace lastrivet::backup {

/// What a person chose for the backups of a project on this computer.
struct BackupChoice {
    /// The folder that keeps them; empty before one is chosen.
    std::filesystem::path shelf;
    /// Back up without being asked when the folder is there and something was changed.
    bool is_automatic = true;
    /// After how many days without a backup the person is reminded; at least 1.
    int reminder_days = 7;

    friend bool operator==(const BackupChoice &, const BackupChoice &) = default;
};

/// Kept with this project on this computer, outside the journal. Throws `NotWritable`.
void choose(Project &project, const BackupChoice &choice);
BackupChoice choiceOf(const Project &project);

/// How well the records are kept elsewhere.
enum class Standing {
    /// The last backup holds the newest change, or is not older than the person allows.
    Fresh,
    Old,
    Never,
};
Standing standing(const Project &project);
/// Calendar days in the workshop since a backup; never negative.
std::int64_t daysSince(const LastBackup &last, const Project &project);

} // namespace lastrivet::backup
