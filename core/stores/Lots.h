// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "core/records/Records.h"

#include <vector>

namespace lastrivet::stores {

enum class LotState {
    WithoutDate, ///< no expiry on record
    Good,
    ExpiresSoon, ///< within `soonDays`
    Expired,
};

/// How a lot of material stands on a day, and what it was used for.
struct LotStanding {
    LotState state = LotState::WithoutDate;
    /// Until its last good day; below zero after it.
    std::optional<std::int64_t> days_left;
    /// Live uses by that day, the newest first.
    std::vector<Id<MaterialUse>> uses;
    /// Of those: after the lot had expired, and nobody has accepted it.
    std::int64_t used_expired = 0;
};

LotStanding standingOf(const MaterialLot &lot, const Records &records, Moment asOf);

/// The curing of a material use, as far as its cure time is on record.
struct Cure {
    Id<MaterialUse> use;
    /// A day without time counts to its last minute; nothing when the cure time is not on record.
    std::optional<Moment> ends;
    /// Not over yet at the moment that was asked for.
    bool is_running = false;
};

Cure cureOf(const MaterialUse &use, Moment now);

/// Every live use that still cures, the last to be done first; and for each the closings that must
/// stay open for it among others.
struct HeldByCure {
    Cure cure;
    IdSet<Closing> closings;
};
std::vector<HeldByCure> running(const Records &records, const readiness::Answer &answer,
                                Moment now);

} // namespace lastrivet::stores
