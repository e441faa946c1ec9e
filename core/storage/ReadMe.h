// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/ProjectFolder.h"

#include <string>
#include <string_view>

namespace lastrivet::storage {

/// A page for somebody who finds a project's folder and does not have the program.
std::string readMeText(std::string_view projectName);

/// The query that lists the photographs of a part and of all parts in it, by whatever record they
/// belong to; its parameter `:part` is the part's code or name.
std::string photosOfPartText();

/// Writes both into the folder, durably, in place of what had their names. Throws `NotSaved`.
void writeReadMe(const ProjectFolder &folder, std::string_view projectName);

} // namespace lastrivet::storage
