// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/Profile.h"
#include "core/readiness/Answer.h"
#include "core/records/Records.h"

#include <ostream>

namespace lastrivet::cli {

/// What of an answer is told.
struct ReadinessScope {
    /// The closings asked for, ascending; empty means all, and then also what follows from them.
    IdSet<Closing> closings;

    bool holds(Id<Closing> id) const;
};

/// The readiness answer for people: one sentence of counts, then the closings by state, each with
/// its nearest blockers and what would clear them.
void printReadiness(const readiness::Answer &answer, const Records &records, const Profile &profile,
                    const ReadinessScope &scope, std::ostream &out);

} // namespace lastrivet::cli
