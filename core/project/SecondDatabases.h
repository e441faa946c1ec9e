// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"

#include <filesystem>
#include <vector>

namespace lastrivet {

/// Databases of this program that lie in a project's folder beside its own, by name, as a program
/// that keeps folders alike on several computers leaves them. Each can be merged.
std::vector<std::filesystem::path> secondDatabases(const Project &project);

/// Puts one that was merged among the backups, where it is no longer in the way. Throws `NotSaved`.
void putAway(const Project &project, const std::filesystem::path &second);

} // namespace lastrivet
