// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/merge/PhotoIndex.h"
#include "core/storage/ConflictTable.h"
#include "core/storage/RecordRows.h"

#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace lastrivet::merge {

/// A field of a record; the empty name stands for the record as a whole.
using FieldOfRecord = std::pair<RecordRef, std::string>;
/// A row of a keyed list: of which table, and its key.
using RowOfList = std::pair<FieldOfRecord, storage::Cell>;

/// What a replay remembers of the changes it has played, beyond what they made of the records.
struct ReplayMemory {
    struct Gone {
        storage::RecordRows rows;
        std::string by;
    };

    /// A decision that a later one of another copy overruled.
    struct Overruled {
        /// The conflict as it was decided before, and by which change.
        storage::ConflictRow before;
        std::string decider;
        /// Which change overruled it.
        std::string by;
        /// The conflict that tells of both; 0 when there is none.
        std::int64_t told = 0;
    };

    /// Records that were taken back, as they last were.
    std::map<RecordRef, Gone> gone;
    /// Records as they were made first.
    std::map<RecordRef, storage::Row> made;
    /// How many copies made the same record; one that is taken back in one copy stays in the other.
    std::map<RecordRef, int> makers;
    /// Rows of keyed lists that were taken out, as they last were.
    std::map<RowOfList, storage::Row> takenOut;
    /// Who gave a field its value last.
    std::map<FieldOfRecord, std::string> writers;
    /// Values that somebody saw in their copy though they are not in the merged records.
    std::map<FieldOfRecord, std::vector<storage::Cell>> seen;
    /// Photographs that two copies took in: the id that went, and the id that stands for it.
    std::map<std::int64_t, std::int64_t> samePhoto;
    /// All photographs that were there at any time of the replay.
    PhotoIndex photos;
    /// change_ids of changes that were left out, and whether they made records.
    std::map<std::string, bool> setAside;
    /// Files of photographs that only a change that was left out put on record, and which of them.
    std::map<std::string, RecordRef> leftOutFiles;
    /// Which change decided a conflict last, by the conflict's id.
    std::map<std::int64_t, std::string> deciders;
    /// Conflicts that two copies decided differently.
    std::set<std::int64_t> contested;
    /// What was decided before the other decision, by the conflict's id.
    std::map<std::int64_t, Overruled> overruled;

    const std::string &writerOf(RecordRef record, const std::string &field) const;
    /// Whether a photograph that was left out has the name, and it is another than this one.
    bool isOfLeftOut(const std::string &file, RecordRef photo) const;
    bool wasSeen(RecordRef record, const std::string &field, const storage::Cell &value) const;
};

} // namespace lastrivet::merge
