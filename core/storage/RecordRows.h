// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"
#include "core/storage/RecordTable.h"

#include <map>
#include <memory>
#include <optional>
#include <vector>

namespace lastrivet::storage {

/// One record as the rows that its tables keep of it, which is how changesets speak of it.
struct RecordRows {
    /// The rows of a set or list by the second column of their key: item, position or person.
    using Collection = std::map<Cell, Row>;

    RecordRows(const Records &records, RecordRef record);

    bool isThere() const { return main.has_value(); }
    Collection &rowsOf(const RecordTable &table);
    /// The record that these rows are, or null when it is not there; lists close their gaps.
    /// Throws `UnreadableInput` for a value that no program of ours can have written.
    std::shared_ptr<void> record() const;
    /// Puts the record into `records`, or removes it when it is not there.
    void putInto(Records &records) const;

    RecordRef ref;
    std::optional<Row> main;
    /// In the order of `tablesOf`, without the record's own table.
    std::vector<Collection> collections;

    friend bool operator==(const RecordRows &, const RecordRows &) = default;
};

} // namespace lastrivet::storage
