// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Minutes.h"
#include "core/packet/Region.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// Who did what in the region, and when.
struct WorkLog {
    struct Worker {
        std::string name;
        /// Empty when nobody wrote it down.
        std::optional<Minutes> minutes;
        bool paid = false;
    };
    struct Session {
        Id<WorkSession> id;
        std::optional<Moment> began;
        bool approximate = false;
        std::optional<Minutes> minutes;
        std::string part;
        WorkKind kind = WorkKind::Other;
        std::string step;
        std::string squawk;
        std::string note;
        std::string place;
        std::string source;
        std::vector<Worker> workers;
    };
    /// What one person did in the region.
    struct Total {
        std::string name;
        std::string credential;
        WordSet<Role> roles;
        std::int64_t sessions = 0;
        Minutes minutes;
        /// Sessions whose time nobody wrote down.
        std::int64_t without_time = 0;
        bool paid = false;
    };

    /// By date.
    std::vector<Session> sessions;
    /// Most minutes first.
    std::vector<Total> people;
};

/// A log entry as it is printed.
WorkLog::Session sessionOf(const Records &records, const WorkSession &session);

WorkLog workLog(const Region &region);

} // namespace lastrivet::packet
