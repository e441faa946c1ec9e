// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"
#include "core/project/JournalEntry.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet {

/// A date that was put on record long after the day itself.
struct LateDate {
    RecordRef record;
    /// The field, "found_on"; within a list, list and field: "events.closed_on".
    std::string field;
    Moment day;

    friend bool operator==(const LateDate &, const LateDate &) = default;
};

/// True for a row by which somebody, or the watched folder, put something on record at the row's
/// time, in this copy or in one that was merged. False for imports, whose contents were written
/// down at some unknown time before; and for undo, redo and changes that take an older row back,
/// whose contents an earlier row wrote down.
bool isWrittenDown(const JournalLine &row);

/// The dates that somebody put on record by this row more than `allowedDays` after the day that
/// they name. Dates of what is planned, due or printed on a document do not count, nor when a
/// picture was taken, nor anything imported (see `isWrittenDown`).
///
/// `zone` is the workshop's IANA zone, in which the row's time has its day.
std::vector<LateDate> lateDates(const JournalEntry &row, const std::vector<JournalChange> &changes,
                                std::string_view zone, std::int64_t allowedDays);

/// True when the row's time is not the clock's, but the next free one after the row before: the
/// clock had been set back, and times in the journal always rise.
bool isPushedAhead(const JournalEntry &row, const JournalEntry &before);

} // namespace lastrivet
