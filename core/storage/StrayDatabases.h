// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/ProjectFolder.h"

#include <filesystem>
#include <vector>

namespace lastrivet::storage {

/// Other databases of this program that lie beside the project's own, by name: what a program that
/// keeps folders alike on several computers leaves there when both were written to. Read-only.
std::vector<std::filesystem::path> strayDatabases(const ProjectFolder &folder);

} // namespace lastrivet::storage
