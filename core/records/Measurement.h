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
    IdSet<Closing> may_follow;
    std::string what;
    std::string unit;
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
