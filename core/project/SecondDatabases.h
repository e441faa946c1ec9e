// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"

#include <filesystem>
#include <vector>

namespace lastrivet {

/// Further databases of this program in a project's folder, by name: a program that synchronises
/// folders leaves them there when two computers wrote at once. Each can be merged.
std::vector<std::filesystem::path> secondDatabases(const Project &project);

/// Moves one that was merged into the project's backups. Throws `NotSaved`.
void putAway(const Project &project, const std::filesystem::path &second);

} // namespace lastrivet
