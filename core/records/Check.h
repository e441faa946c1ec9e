// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Moment.h"
#include "core/records/RecordType.h"

#include <optional>
#include <string>

namespace lastrivet {

struct Closing;
struct Media;
struct Person;

/// A line of the list that is gone through before a closing.
struct Check {
    static constexpr RecordType type = RecordType::Check;

    Id<Check> id;
    Id<Closing> closing_id;
    std::string item;
    /// Where the line comes from: a list of the profile, a manual.
    std::string source;
    /// Part of the plan from this day on (see `Reckoning`); from the beginning when empty.
    std::optional<Moment> planned_on;
    /// Closings after which it may still be completed: it holds none of them open.
    IdSet<Closing> may_follow;
    std::optional<Moment> done_on;
    Id<Person> done_by;
    bool not_applicable = false;
    IdSet<Media> media_ids;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Check &, const Check &) = default;
};

} // namespace lastrivet
