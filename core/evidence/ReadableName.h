// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"
#include "core/evidence/FileKind.h"

#include <filesystem>
#include <string>
#include <string_view>

namespace lastrivet::evidence {

/// A name as a short piece of a file name: lower-case ASCII letters, digits and single hyphens;
/// empty when nothing of it can be told in ASCII.
std::string slug(std::string_view name);

/// The folder for a file, relative to the project folder: `photos/2026` or `documents`.
std::filesystem::path folderFor(FileKind kind, Moment when);

/// `2026-03-14_1523_left-aileron_4f2a91.jpg`: when, what and the first `digits` of the hash.
std::string readableName(FileKind kind, Moment when, std::string_view slug, std::string_view sha256,
                         std::size_t digits);

} // namespace lastrivet::evidence
