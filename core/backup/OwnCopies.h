// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/backup/Backup.h"

namespace lastrivet::backup {

/// Copies a project's database into its own `backups`, unless the newest copy there holds the same
/// state; drops old copies so that 7 days, 4 weeks and 12 months stay. True when it copied.
/// May run beside a program that writes, on any thread. Throws `Fault`s.
bool keepCopy(const std::filesystem::path &project, Time now);
/// True when no copy of the database is of this day (UTC).
bool isCopyDue(const std::filesystem::path &project, Time now);
/// The same for a program that changes something and ends: of a small database a copy is due after
/// each change, of a large one once a day, because making it takes longer than the change.
bool isCopyDueAtEnd(const std::filesystem::path &project, Time now);

} // namespace lastrivet::backup
