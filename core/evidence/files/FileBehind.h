// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>

namespace lastrivet::evidence {

/// The file to replace when a person names one: of a link, the file that it leads to. Throws
/// `NotSaved` for a device, a pipe and a link that leads nowhere, which cannot be replaced as a
/// whole, and for what a project keeps, as its database and its photographs, whose place nothing
/// else may take.
std::filesystem::path fileBehind(const std::filesystem::path &named);

} // namespace lastrivet::evidence
