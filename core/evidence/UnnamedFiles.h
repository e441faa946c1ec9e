// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace lastrivet::evidence {

/// Says that a file which lies in a project's folder already is going to be named by a record: who
/// made it may give up, and must not take it along. To be called before the file is looked at, so
/// that it is still there afterwards or is missed. `file` is its name as a record has it.
void keepForRecord(const std::filesystem::path &projectFolder, const std::string &file);
/// Takes back that `keepForRecord` said so once: the record does not come after all. Who made the
/// file may take it along again.
void letGo(const std::filesystem::path &projectFolder, const std::string &file);

/// Removes files that were copied into a project's folder for records that never came. What a
/// record names by now, a withdrawn one too, stays, and so does what `keepForRecord` was told of;
/// all stay when the records cannot be asked. On any thread; throws nothing.
void removeUnnamed(const std::filesystem::path &projectFolder,
                   const std::vector<std::string> &files);

} // namespace lastrivet::evidence
