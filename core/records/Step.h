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
    std::optional<std::int64_t> position;
    std::string title;
    std::string plan_ref;
    std::optional<Moment> planned_on;
    std::optional<Minutes> estimate_minutes;
    IdSet<Step> after;
    Id<Closing> closes;
    IdSet<Closing> may_follow;
    std::optional<Moment> done_on;
    std::optional<Moment> dropped_on;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Step &, const Step &) = default;
};

} // namespace lastrivet
