// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <chrono>
#include <filesystem>

namespace lastrivet::exchange {

/// Where the builder's log lies in a project's folder, for whoever finds it without the program.
std::filesystem::path logbookIn(const std::filesystem::path &projectFolder);

/// Writes into a project's folder what can be read without the program: the page that explains it,
/// and every kind of record as CSV in `lists`. Throws `Fault`s.
void writePlainRecords(const Records &records, const std::filesystem::path &projectFolder);

/// True for the path of a file that the program itself writes into a project's folder, replacing
/// whatever is there.
bool isOwnPaper(const std::filesystem::path &file);

/// True when the log in the folder is older than a year, or there is none although work was logged
/// more than a month before `today`.
bool arePlainRecordsDue(const Records &records, const std::filesystem::path &projectFolder,
                        Moment today);

} // namespace lastrivet::exchange
