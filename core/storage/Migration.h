// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/Database.h"
#include "core/storage/ProjectFolder.h"
#include "core/storage/SchemaSteps.h"

#include <chrono>
#include <span>
#include <string>

namespace lastrivet::storage {

/// Brings the database to the last of `steps`, each in a transaction of its own; a new database
/// goes through all of them. Data that a step rewrites becomes a row of the journal, so that the
/// journal still tells how every record came to be what it is.
void runSteps(Database &database, std::span<const SchemaStep> steps = schemaSteps(),
              std::chrono::sys_time<std::chrono::milliseconds> now = {});

/// Rebuilds the search index of a copy that went through `runSteps`; it stays empty when the
/// records cannot be read.
void renewSearch(Database &copy);

/// Does the same to the database of a project. It is first copied into `backups`, where the copy
/// stays; and each step is undone unless afterwards references lead somewhere and all tables have
/// the shape that they have in a new database.
///
/// Throws `NotSaved` with one sentence that names the copy; the database then is at the last step
/// that went well, and whole.
void migrate(Database &database, const ProjectFolder &folder,
             std::chrono::sys_time<std::chrono::milliseconds> now,
             std::span<const SchemaStep> steps = schemaSteps());

/// The change_id of the journal row that a step writes: the same on every computer, so that copies
/// that were migrated apart have that change in common.
std::string migrationId(int step);

} // namespace lastrivet::storage
