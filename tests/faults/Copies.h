// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <set>
#include <string>
#include <string_view>

namespace lastrivet::faults {

/// The folder beside a project where its backups go.
inline constexpr std::string_view shelf = "shelf";

/// What is wrong with the copies of the project in a site's folder: with the backup on the shelf,
/// and with the copies of the database among the project's own `backups`. Empty when each that is
/// there is whole.
std::string damageInCopies(const std::filesystem::path &site);

/// The hashes of all journal rows of the backup on the shelf; empty when there is none.
std::set<std::string> hashesOnShelf(const std::filesystem::path &site);

} // namespace lastrivet::faults
