// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Clock.h"
#include "core/project/Project.h"

#include <cstddef>
#include <filesystem>
#include <memory>

namespace lastrivet::test {

/// A new project without records, of the plain profile.
std::unique_ptr<Project> makeEmptyProject(const std::filesystem::path &folder, const Clock &clock);

/// Takes every record in, in one change. Throws a `Fault` when the project refuses them.
void takeIn(Project &project, const Records &records);

/// A project with the reference load, `factor` times ten builders' lifetimes; always the same.
std::unique_ptr<Project> makeReferenceProject(const std::filesystem::path &folder,
                                              const Clock &clock, std::size_t factor = 1);

} // namespace lastrivet::test
