// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "core/records/Records.h"

#include <vector>

namespace lastrivet::squawks {

/// How far a squawk has come. Open and fixed ones are outstanding.
enum class Progress { Open, Fixed, Verified, Accepted };

Progress progressAt(const Squawk &squawk, Moment by);
inline bool isOutstanding(Progress progress)
{
    return progress == Progress::Open || progress == Progress::Fixed;
}

/// A squawk with its place in the list.
struct ListedSquawk {
    Id<Squawk> id;
    Progress progress = Progress::Open;
    /// Lies behind what is closed for good.
    bool is_out_of_reach = false;
    /// What is still open and would bury it, the one that is nearest to being closed first: that
    /// with the fewest blockers that must be cleared.
    std::vector<Id<Closing>> closings;
};

/// The squawks found by the moment of the answer, in the order in which they matter: outstanding
/// ones first; of these, what is out of reach, then what will be next, then by severity, age and
/// id.
std::vector<ListedSquawk> squawkList(const Records &records, const readiness::Answer &answer);

} // namespace lastrivet::squawks

namespace lastrivet {

template <> struct Words<squawks::Progress> {
    static constexpr std::array<std::string_view, 4> list{"open", "fixed", "verified", "accepted"};
};

} // namespace lastrivet
