// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"
#include "core/records/Records.h"

#include <map>
#include <vector>

namespace lastrivet::evidence {

/// A work session that a photo may belong to.
struct SessionMatch {
    enum class Fit {
        WithinSpan, ///< taken between the session's beginning and end
        SameDay,
    };

    Id<WorkSession> session;
    Fit fit = Fit::SameDay;

    friend bool operator==(const SessionMatch &, const SessionMatch &) = default;
};

/// Suggests work sessions for photos by the time they were taken.
class SessionMatcher {
public:
    explicit SessionMatcher(const Records &records);

    /// The sessions that fit, best first: those that span the moment, the shortest first; then
    /// others of the same day, the nearest in time first. Withdrawn sessions never fit.
    std::vector<SessionMatch> matches(Moment takenOn) const;

private:
    struct Session {
        Id<WorkSession> id;
        /// Minutes since 1970 on the workshop's clock; `begin == end` when no span is known.
        std::int64_t begin = 0;
        std::int64_t end = 0;
        bool has_time = false;
    };

    std::multimap<std::chrono::sys_days, Session> m_byDay;
};

} // namespace lastrivet::evidence
