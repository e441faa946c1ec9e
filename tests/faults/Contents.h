// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::faults {

/// Every file in a folder with its bytes, but what lies in the folder named `except`.
using Contents = std::map<std::string, std::string>;
Contents contentsOf(const std::filesystem::path &folder, std::string_view except = {});

/// True for the name of a file on its way, which may be half.
bool isUnfinished(const std::filesystem::path &file);
std::vector<std::string> unfinishedIn(const std::filesystem::path &folder);

} // namespace lastrivet::faults
