// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/Value.h"
#include "core/project/JournalEntry.h"

#include <set>
#include <vector>

namespace lastrivet::journal {

/// How a field of a record changed, as people read it.
struct FieldAccount {
    /// Null for the copy of the rule profile, whose text is no reading for people.
    const Field *field = nullptr;
    Value from;
    Value to;
    std::vector<Value> added;
    std::vector<Value> removed;
};

/// What became of one record.
struct RecordAccount {
    RecordRef record;
    Message name;
    /// False when it was taken back since.
    bool is_there = true;
    RowChange kind = RowChange::Update;
    std::vector<FieldAccount> fields;
};

/// What people call the record that was changed: by the name that it has now, or, when it was taken
/// back since, by what it was written down or taken back with.
Message nameOf(const Records &records, const JournalChange &change);

/// What a journal row changed, record by record, with the names that records have now.
std::vector<RecordAccount> accountOf(const Records &records,
                                     const std::vector<JournalChange> &changes);

/// A part with everything inside it, and all that is recorded on these parts.
std::set<RecordRef> belongingTo(const Records &records, Id<Component> part);
/// A closing with its hold points, its signatures and its lines to check.
std::set<RecordRef> belongingTo(const Records &records, Id<Closing> closing);

} // namespace lastrivet::journal
