// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Minutes.h"
#include "core/records/Records.h"

#include <cstdint>
#include <span>
#include <vector>

namespace lastrivet::hours {

/// Sums over log entries: minutes by the clock, man-minutes of all who worked, and how many
/// entries. An entry without minutes adds none.
struct Total {
    Minutes minutes;
    Minutes worker_minutes;
    std::int64_t sessions = 0;

    Total &operator+=(const Total &other);
    friend bool operator==(const Total &, const Total &) = default;
};

struct ComponentHours {
    Id<Component> id;
    Total own;
    Total with_below;

    friend bool operator==(const ComponentHours &, const ComponentHours &) = default;
};

struct KindHours {
    WorkKind kind = WorkKind::Other;
    Total total;

    friend bool operator==(const KindHours &, const KindHours &) = default;
};

/// The hours of one person; with an empty id, of work of which nobody knows who did it.
struct PersonHours {
    Id<Person> id;
    Minutes worker_minutes;
    std::int64_t sessions = 0;

    friend bool operator==(const PersonHours &, const PersonHours &) = default;
};

/// An ISO 8601 week; its year is that of its Thursday.
struct WeekHours {
    int year = 0;
    int week = 0;
    Total total;
    /// Of all who worked: done again.
    Minutes rework;

    friend bool operator==(const WeekHours &, const WeekHours &) = default;
};

struct MonthHours {
    int year = 0;
    int month = 0;
    Total total;
    /// Of all who worked: done again.
    Minutes rework;

    friend bool operator==(const MonthHours &, const MonthHours &) = default;
};

/// The hours of a project. A log entry counts where it began, and for its own part.
struct Totals {
    Total total;
    Total rework;
    /// Parts with a log entry at or below them, by id.
    std::vector<ComponentHours> components;
    /// Work on no part.
    Total unassigned;
    /// In the order of the vocabulary; only kinds that occur, as in all that follow.
    std::vector<KindHours> kinds;
    /// By id, the unknown person last.
    std::vector<PersonHours> people;
    std::vector<WeekHours> weeks;
    std::vector<MonthHours> months;

    friend bool operator==(const Totals &, const Totals &) = default;
};

/// The man-minutes of a log entry; without workers the project's builder worked.
Minutes workerMinutes(const WorkSession &session);

/// Sums all live log entries; those without workers are the project's builder's.
Totals totals(const Records &records);
/// Sums chosen log entries, which have a `began`.
Totals totals(const Records &records, std::span<const WorkSession *const> sessions);

} // namespace lastrivet::hours
