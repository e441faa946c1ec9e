// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "core/records/Records.h"

#include <vector>

namespace lastrivet::readiness {

/// How long a squawk can still be reached.
enum class Reachable {
    NotForLong, ///< a closing that may be next would bury it
    NoLonger,   ///< it lies behind a permanent closing
    Yes,
    Done, ///< verified or accepted; nobody has to reach it
};

/// A squawk in the list of work to do.
struct ListedSquawk {
    Id<Squawk> id;
    Reachable reachable = Reachable::Yes;
    /// Those that would bury it, or those to open for it; ascending.
    IdSet<Closing> closings;

    friend bool operator==(const ListedSquawk &, const ListedSquawk &) = default;
};

/// Every live squawk that was found by `asOf`, as it stood then: first what is soon out of reach,
/// then what already is, then the other open ones, then the done; within each by severity, the
/// longest known first.
std::vector<ListedSquawk> squawkOrder(const Records &records, const Answer &answer, Moment asOf);

} // namespace lastrivet::readiness
