// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Minutes.h"
#include "core/readiness/Answer.h"
#include "core/records/Records.h"

#include <chrono>
#include <cstddef>
#include <vector>

namespace lastrivet::today {

/// How the region closings stand, each counted once; the closing of the whole aircraft is apart.
struct Tally {
    std::int64_t must_stay_open = 0;
    /// Of those: nothing but somebody's word is missing.
    std::int64_t wait_for_signature = 0;
    std::int64_t clear = 0;
    /// No work in their reach yet; in none of the other numbers and no list.
    std::int64_t not_begun = 0;
    std::int64_t closed = 0;
    std::int64_t closed_early = 0;
    /// Of those that wait for a signature: the builder's own is enough.
    std::int64_t wait_for_own = 0;
};

/// A closing that must stay open, and the first thing to do about it.
struct StaysOpen {
    Id<Closing> closing;
    readiness::Blocker nearest;
    /// Further must blockers.
    std::int64_t more = 0;
};

/// A step that can be worked on, and the closings in hold that wait for it among others.
struct WorkableStep {
    Id<Step> step;
    IdSet<Closing> unlocks;
};

enum class AttentionKind {
    FingerTight,
    OutOfReach,
    ClosedEarly,
    OutdatedSignature,
    Visit,
    ExpiringMaterial,
    CalibrationDue,
    LatePart,
    ToComplete,
};

/// Something that is not in the way of one closing, and should not be forgotten.
struct Attention {
    AttentionKind kind;
    RecordRef record;
    Message sentence;
};

/// How many weeks back the first page looks, the running one among them.
inline constexpr std::size_t weeksShown = 26;

/// A week from Monday to Sunday (ISO 8601).
struct WeekHours {
    std::chrono::sys_days monday{};
    Minutes minutes;
    /// Of those: done again.
    Minutes rework;
};

/// The hours that the clock says.
struct Hours {
    Minutes this_week;
    Minutes this_month;
    Minutes in_all;
    /// The last `weeksShown` weeks, the running one last.
    std::vector<WeekHours> weeks;
};

/// What the first page says.
struct Today {
    Tally tally;
    std::vector<StaysOpen> stays_open;
    std::vector<WorkableStep> workable;
    std::vector<readiness::LastChance> last_chance;
    std::vector<Attention> attention;
    Hours hours;
};

/// How the closings stand, of an answer to these records.
Tally tally(const Records &records, const readiness::Answer &answer);
/// All that the first page says, of an answer to these records.
Today today(const Records &records, const readiness::Answer &answer);

/// The first page in one to three sentences: how many closings must stay open, against how many
/// nothing on record stands, and how many were closed with gaps. Never says that anything is safe.
std::vector<Message> headline(const Tally &tally);
} // namespace lastrivet::today
