// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/Profile.h"
#include "core/readiness/Answer.h"
#include "core/records/Records.h"

#include <vector>

namespace lastrivet::readiness {

/// What opening a closed region again would do to the records.
struct IfReopened {
    /// A signature that would no longer hold, and what it is for.
    struct Signature {
        Id<HoldPoint> hold_point;
        Id<SignOff> sign_off;
    };
    /// A closing that would stand otherwise.
    struct Change {
        Id<Closing> closing;
        State before = State::Closed;
        State after = State::Hold;
    };

    /// Of this closing and of those around it, by id.
    std::vector<Signature> signatures;
    /// By id; the opened one among them.
    std::vector<Change> changes;
    /// Open things inside that could be reached again, by record name and id.
    std::vector<RecordRef> reachable;
};

/// Works the answer out once more for records in which the closing is opened at `on`, and compares
/// it with the answer without, as of `asOf`. The closing must be on record.
IfReopened ifReopened(const Records &records, const Profile &profile, Id<Closing> closing,
                      Moment on, Moment asOf);

} // namespace lastrivet::readiness
