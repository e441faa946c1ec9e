// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Media.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

namespace lastrivet::evidence {

/// Where the file of a record lies; empty when the record names no file inside the project folder
/// (absolute, `..`, a link that leads outside), whether or not the file exists.
std::optional<std::filesystem::path> locate(const std::filesystem::path &projectFolder,
                                            const Media &media);
std::optional<std::filesystem::path> locate(const std::filesystem::path &projectFolder,
                                            std::string_view file);

/// A file's name as a sentence can show it: valid UTF-8 without control characters, shortened.
std::string shownName(const std::filesystem::path &file);

} // namespace lastrivet::evidence
