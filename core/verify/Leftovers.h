// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/ProjectFolder.h"

#include <filesystem>
#include <set>
#include <string>
#include <vector>

namespace lastrivet::verify_detail {

/// Half-written files of programs that were interrupted: those with a temporary name of ours, but
/// not of this process, anywhere in the project's folder, unless a record names them.
///
/// `named`: paths within the folder, with slashes.
std::vector<std::filesystem::path> leftovers(const storage::ProjectFolder &folder,
                                             const std::set<std::string> &named);

} // namespace lastrivet::verify_detail
