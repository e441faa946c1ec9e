// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/Database.h"

#include <set>
#include <string>
#include <string_view>

namespace lastrivet::storage {

/// The one spelling of a file's place in the project's folder.
std::string fileName(std::string_view file);

/// The files of all records, withdrawn ones too, in the spelling of `fileName`.
std::set<std::string> filesOnRecord(const Database &database);

/// Every file that the journal ever named, in the spelling of `fileName`: undone photographs keep
/// their files. With the names under which a merge puts them where these are taken.
std::set<std::string> filesEverNamed(Database &database);

} // namespace lastrivet::storage
