// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/ProjectFolder.h"

#include <filesystem>
#include <vector>

namespace lastrivet::storage {

/// Other databases of this program beside the project's own, by name: a program that synchronises
/// folders leaves them there when two computers wrote at once. They are only read.
std::vector<std::filesystem::path> strayDatabases(const ProjectFolder &folder);

} // namespace lastrivet::storage
