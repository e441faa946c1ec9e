// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/RecordType.h"
#include "core/storage/Database.h"

#include <optional>
#include <stop_token>
#include <string>
#include <vector>

namespace lastrivet::storage {

/// What SQLite's whole check finds damaged, at most a hundred; empty when all is well.
std::vector<std::string> damagesOf(const Database &database);

/// The first damage that SQLite's quick check finds, which looks at every page but compares no
/// index; table by table, so that others need not wait for all of it. Empty when all is well, or
/// stopped.
std::optional<std::string> firstDamageOf(const Database &database, const std::stop_token &stop);

/// A row that names one that does not exist.
struct DanglingRow {
    std::string table;
    /// Of the record; 0 in the tables of sets and lists.
    std::int64_t id = 0;
    std::string missing;

    bool operator==(const DanglingRow &) const = default;
};
std::vector<DanglingRow> danglingRows(const Database &database);

/// A record that is not there, though a set or list of it has rows left; empty when there is none.
std::optional<RecordRef> ownerOfLeftRows(const Database &database);

} // namespace lastrivet::storage
