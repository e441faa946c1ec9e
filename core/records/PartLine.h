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
struct Step;

/// A line of a packing list, against what was counted.
struct PartLine {
    static constexpr RecordType type = RecordType::PartLine;

    Id<PartLine> id;
    Id<Component> component_id;
    Id<Step> step_id;
    /// Closings after which it may still be completed: it holds none of them open.
    IdSet<Closing> may_follow;
    /// Part of the plan from this day on (see `Reckoning`); from the beginning when empty.
    std::optional<Moment> planned_on;
    /// What came, or is to come, together; a name that the builder gives.
    std::string shipment;
    std::string part_number;
    std::string name;
    /// How many the packing list names.
    std::int64_t quantity = 0;
    std::int64_t received_quantity = 0;
    std::optional<Moment> received_on;
    /// Of those received, how many are not usable.
    std::int64_t damaged_quantity = 0;
    std::optional<Moment> ordered_on;
    std::optional<Moment> expected_on;
    /// In minor units of the currency (cents).
    std::optional<std::int64_t> unit_price;
    /// An ISO 4217 code.
    std::string currency;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const PartLine &, const PartLine &) = default;
};

} // namespace lastrivet
