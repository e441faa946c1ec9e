// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Media.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

namespace lastrivet::evidence {

/// True for a name that the file of a record may have: inside the folder, of letters that are
/// nothing but letters everywhere, and none that the program itself keeps there.
bool mayNameFile(std::string_view name);

/// Where the file of a record lies; empty when the record names no file that it may have inside the
/// project folder (absolute, `..`, a link that leads outside), whether or not the file exists.
std::optional<std::filesystem::path> locate(const std::filesystem::path &projectFolder,
                                            const Media &media);
std::optional<std::filesystem::path> locate(const std::filesystem::path &projectFolder,
                                            std::string_view file);

/// The same for a file that is to be handed to the desktop: only when its name and its content say
/// alike that it is a picture, a video or a PDF. Other programs run what the name says.
std::optional<std::filesystem::path> locateToOpen(const std::filesystem::path &projectFolder,
                                                  const Media &media);

/// Of a file that `locate` does not find, why: a sentence whose `{0}` is its name.
std::string_view whyNotLocated(std::string_view file);

/// A file's name as a sentence can show it: valid UTF-8 without control characters, shortened.
std::string shownName(const std::filesystem::path &file);

} // namespace lastrivet::evidence
