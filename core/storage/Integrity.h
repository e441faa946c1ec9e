// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/Database.h"

#include <string>
#include <vector>

namespace lastrivet::storage {

/// What SQLite's whole check finds damaged, at most a hundred; empty when all is well.
std::vector<std::string> damagesOf(const Database &database);

/// A row that names one that does not exist.
struct DanglingRow {
    std::string table;
    /// Of the record; 0 in the tables of sets and lists.
    std::int64_t id = 0;
    std::string missing;
};
std::vector<DanglingRow> danglingRows(const Database &database);

} // namespace lastrivet::storage
