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
struct Component;
struct Person;
struct Step;
struct Tool;

/// Something measured against limits.
struct Measurement {
    static constexpr RecordType type = RecordType::Measurement;

    Id<Measurement> id;
    Id<Component> component_id;
    Id<Step> step_id;
    /// Closings after which it may still be completed: it holds none of them open.
    IdSet<Closing> may_follow;
    /// What is measured: "aileron gap, outboard".
    std::string what;
    /// Of the limits and the value, as free text.
    std::string unit;
    /// Part of the plan from this day on (see `Reckoning`); from the beginning when empty.
    std::optional<Moment> planned_on;
    std::optional<double> minimum;
    std::optional<double> maximum;
    std::optional<double> value;
    std::optional<Moment> measured_on;
    Id<Tool> tool_id;
    std::optional<Moment> accepted_on;
    Id<Person> accepted_by;
    std::string accepted_basis;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Measurement &, const Measurement &) = default;
};

} // namespace lastrivet
