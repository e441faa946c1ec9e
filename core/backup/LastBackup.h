// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/backup/Backup.h"

#include <filesystem>
#include <optional>
#include <string>

namespace lastrivet {
class Project;
}

namespace lastrivet::backup {

/// The last backup of a project elsewhere that was read back whole.
struct LastBackup {
    Time at;
    std::string place;
    /// The newest journal row's hash in it, 64 hex digits.
    std::string journal_hash;

    friend bool operator==(const LastBackup &, const LastBackup &) = default;
};

/// Kept with this project on this computer, outside the journal. Throws `NotWritable`.
void noteBackup(Project &project, const LastBackup &last);
/// Empty before the first.
std::optional<LastBackup> lastBackup(const Project &project);

/// For a program that may not write to the project while another one has it: leaves the note in the
/// project's `backups`, where `takeNote` of the other finds it. Throws `Fault`s.
void leaveNote(const std::filesystem::path &project, const LastBackup &last);
/// Takes in what `leaveNote` left, unless a later backup is noted, and removes it. True when there
/// was something new. Throws `Fault`s.
bool takeNote(Project &project);

} // namespace lastrivet::backup
