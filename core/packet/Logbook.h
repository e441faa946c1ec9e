// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hours/Hours.h"
#include "core/packet/Aircraft.h"
#include "core/packet/Photo.h"
#include "core/packet/WorkLog.h"
#include "core/profiles/Profile.h"
#include "core/records/Records.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

enum class LogOrder { ByDate, ByPart };

/// Which entries of the log are printed, and in which order.
struct LogbookChoice {
    LogOrder order = LogOrder::ByDate;
    /// The first and the last moment to be in it; open where empty.
    std::optional<Moment> from;
    std::optional<Moment> until;
    bool has_photos = true;
};

/// The builder's log as data: chapters by month or by part, each with its entries and photographs,
/// and the sums of what is in it.
struct Logbook {
    struct Entry {
        WorkLog::Session session;
        /// The day on which it was written down, when that was late.
        std::optional<Moment> written_late_on;
        bool changed_inspected = false;
        /// The numbers of its photographs.
        std::vector<int> photos;
    };
    struct Chapter {
        /// Its month, in a log by date.
        int year = 0;
        int month = 0;
        /// Its part with the parts above it, in a log by part; empty for work on no part.
        std::string part;
        std::vector<Entry> entries;
        hours::Total total;
        std::vector<Photo> photos;
    };
    /// The hours of a part: of its own entries, and with those of all parts below it.
    struct PartHours {
        std::string name;
        int depth = 0;
        hours::Total own;
        hours::Total with_below;
    };

    Aircraft aircraft;
    LogbookChoice choice;
    std::vector<Chapter> chapters;
    hours::Totals totals;
    /// In the order of the tree; those with an entry at or below them.
    std::vector<PartHours> parts;
    /// Names beside the totals by person, in their order.
    std::vector<std::string> people;
    std::int64_t late_entries = 0;
    /// Entries whose minutes nobody wrote down.
    std::int64_t without_time = 0;
    /// Where more than half of the entries were worked; entries name their place only when it is
    /// another. Empty when there is no such place.
    std::string usual_place;
    /// Days after which an entry counts as late, by the rule profile.
    std::int64_t late_after_days = 0;
};

/// On which day a log entry was written down; empty when nobody knows.
using WrittenOn = std::function<std::optional<Moment>(Id<WorkSession>)>;

/// The log with the entries and photographs that the choice asks for.
///
/// A photograph stands with the entry that it is linked to, else with one of its day on its part or
/// step, else in the chapter of its own day or part. Pictures of nothing but receipts and signed
/// sheets are left out.
Logbook logbookOf(const Records &records, const Profile &profile, const LogbookChoice &choice,
                  const WrittenOn &writtenOn);

} // namespace lastrivet::packet
