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

struct Person;

/// A flight of the test period.
struct Flight {
    static constexpr RecordType type = RecordType::Flight;

    Id<Flight> id;
    std::optional<Moment> flown_on;
    Minutes minutes;
    std::int64_t landings = 1;
    Id<Person> pilot_id;
    /// Empty when there were none.
    std::string faults;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Flight &, const Flight &) = default;
};

} // namespace lastrivet
