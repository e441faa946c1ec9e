// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>

namespace lastrivet::evidence {

/// The file to write where a person named one: behind a link, the file that it leads to. What is
/// written takes the place of what was there, whole, so that a device, a pipe or a link that leads
/// nowhere is refused with `NotSaved`.
std::filesystem::path fileBehind(const std::filesystem::path &named);

} // namespace lastrivet::evidence
