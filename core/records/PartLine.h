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
    IdSet<Closing> may_follow;
    std::optional<Moment> planned_on;
    std::string shipment;
    std::string part_number;
    std::string name;
    std::int64_t quantity = 0;
    std::int64_t received_quantity = 0;
    std::optional<Moment> received_on;
    std::int64_t damaged_quantity = 0;
    std::optional<Moment> ordered_on;
    std::optional<Moment> expected_on;
    std::optional<std::int64_t> unit_price;
    std::string currency;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const PartLine &, const PartLine &) = default;
};

} // namespace lastrivet
