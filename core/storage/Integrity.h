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

/// The first damage found by SQLite's quick check, which reads every page but does not compare the
/// indexes. It goes table by table, so that it can be stopped. Empty when nothing is damaged, or it
/// was stopped.
std::optional<std::string> firstDamageOf(const Database &database, const std::stop_token &stop);

/// A row that refers to one that does not exist.
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
