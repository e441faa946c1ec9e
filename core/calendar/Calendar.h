// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"
#include "core/base/Tongue.h"
#include "core/profiles/Profile.h"
#include "core/records/Records.h"

#include <string>
#include <vector>

namespace lastrivet::calendar {

/// What stands in the calendar of a workshop.
enum class Kind { Inspection, Expiry, Calibration };

/// A day, or a time of a day, on which something is due.
struct Entry {
    Kind kind = Kind::Inspection;
    RecordRef record;
    /// All day when it has no time.
    Moment when;
    std::string summary;
    std::string description;
    /// Empty when nobody wrote it down.
    std::string place;
};

/// Visits that are planned and neither held nor cancelled, days on which material and papers of the
/// certificate expire, and days on which the newest calibration of a tool runs out: from `keptDays`
/// before `today` on, by date. Said in English where no other tongue is given.
std::vector<Entry> entries(const Records &records, const Profile &profile, Moment today,
                           const Tongue &tongue = {});

/// How many days entries are kept after their day, because somebody may still have to act on them.
inline constexpr std::int64_t keptDays = 30;

} // namespace lastrivet::calendar
