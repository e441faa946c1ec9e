// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/RecordType.h"

#include <cstdint>
#include <filesystem>
#include <set>
#include <vector>

namespace lastrivet::journal {

/// Which journal rows of the project in `folder` touched any of the records, by seq, oldest first.
/// Opens the project for itself, to be read only, so it may run on any thread. Throws `Fault`s.
std::vector<std::int64_t> rowsTouching(const std::filesystem::path &folder,
                                       const std::set<RecordRef> &records);

} // namespace lastrivet::journal
