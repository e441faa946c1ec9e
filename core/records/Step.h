// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Minutes.h"
#include "core/base/Moment.h"
#include "core/records/RecordType.h"

#include <optional>
#include <string>

namespace lastrivet {

struct Closing;
struct Component;

/// One step of the building, with what has to come before it.
struct Step {
    static constexpr RecordType type = RecordType::Step;

    Id<Step> id;
    Id<Component> component_id;
    /// Its place among the steps of the part.
    std::optional<std::int64_t> position;
    std::string title;
    /// The drawing or page of the manual.
    std::string plan_ref;
    /// Part of the plan from this day on (see `Reckoning`); from the beginning when empty.
    std::optional<Moment> planned_on;
    std::optional<Minutes> estimate_minutes;
    /// Steps that have to be done before it.
    IdSet<Step> after;
    /// The closing that it closes.
    Id<Closing> closes;
    /// Closings after which it may still be completed: it holds none of them open.
    IdSet<Closing> may_follow;
    std::optional<Moment> done_on;
    /// When it was decided not to do it.
    std::optional<Moment> dropped_on;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Step &, const Step &) = default;
};

} // namespace lastrivet
