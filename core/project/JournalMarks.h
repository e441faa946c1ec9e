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

/// A date that a journal row wrote down long after the day itself.
struct LateDate {
    RecordRef record;
    /// `found_on`; of a row of a list `events.closed_on`.
    std::string field;
    Moment day;

    friend bool operator==(const LateDate &, const LateDate &) = default;
};

/// True for a row by which somebody, or the watched folder, wrote something down at the row's time,
/// in this copy or in one that was merged. An import brings what was written down before, nobody
/// knows when; what was taken back, also by a change of its own, or done again was written down by
/// an earlier row.
bool isWrittenDown(const JournalLine &row);

/// The dates that a person wrote down in this row more than `allowedDays` after the day that they
/// name. What is planned, due or printed on a paper is not counted, nor when a picture was taken;
/// nor anything that came with an import, since nobody knows when it was first written.
///
/// `zone`: the workshop's, in which the row has its day.
std::vector<LateDate> lateDates(const JournalEntry &row, const std::vector<JournalChange> &changes,
                                std::string_view zone, std::int64_t allowedDays);

/// True when the clock was not ahead of the row before, so that this row's time is not the clock's
/// but the next one free: somebody set the clock back.
bool isPushedAhead(const JournalEntry &row, const JournalEntry &before);

} // namespace lastrivet
