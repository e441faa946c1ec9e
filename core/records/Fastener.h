// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Moment.h"
#include "core/records/RecordType.h"
#include "core/records/Vocabulary.h"

#include <optional>
#include <string>

namespace lastrivet {

struct Closing;
struct Component;
struct Person;
struct Step;
struct Tool;

/// Fasteners of one place, from fitted to torqued, sealed and locked.
struct Fastener {
    static constexpr RecordType type = RecordType::Fastener;

    Id<Fastener> id;
    Id<Component> component_id;
    /// The step that it belongs to.
    Id<Step> step_id;
    /// Closings after which it may still be completed: it holds none of them open.
    IdSet<Closing> may_follow;
    /// Where on the part they are.
    std::string place;
    /// What is fitted there: "AN3-5A".
    std::string hardware;
    std::string thread;
    /// How many fasteners this record stands for.
    std::int64_t quantity = 1;
    /// Part of the plan from this day on (see `Reckoning`); from the beginning when empty.
    std::optional<Moment> planned_on;
    /// Limits, drag and value are in `torque_unit`.
    std::optional<double> torque_min;
    std::optional<double> torque_max;
    /// The running torque of a self-locking nut, which is part of `torque_value`.
    std::optional<double> torque_drag;
    TorqueUnit torque_unit = TorqueUnit::InchPounds;
    std::optional<Moment> fitted_on;
    std::optional<Moment> torqued_on;
    /// What the wrench showed.
    std::optional<double> torque_value;
    Id<Tool> tool_id;
    /// When the torque seal was put on.
    std::optional<Moment> marked_on;
    Locking locking = Locking::None;
    std::optional<Moment> locked_on;
    std::optional<Moment> removed_on;
    std::string removed_why;
    std::optional<Moment> accepted_on;
    Id<Person> accepted_by;
    std::string accepted_basis;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Fastener &, const Fastener &) = default;
};

} // namespace lastrivet
