// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Moment.h"
#include "core/records/RecordType.h"
#include "core/records/Vocabulary.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet {

struct Component;
struct Person;
struct SignOff;

/// The act after which a region can no longer be seen or reached.
struct Closing {
    static constexpr RecordType type = RecordType::Closing;

    /// Closed, or opened again: exactly one of the two moments is set.
    struct Event {
        std::optional<Moment> closed_on;
        std::optional<Moment> opened_on;
        Id<Person> by;
        std::string reason;
        bool approximate = false;

        friend bool operator==(const Event &, const Event &) = default;
    };

    Id<Closing> id;
    Id<Component> component_id;
    std::string title;
    ClosingScope scope = ClosingScope::Region;
    IdSet<Component> encloses;
    bool permanent = true;
    MadeBy made_by = MadeBy::Builder;
    std::string method;
    std::vector<Event> events;
    IdSet<SignOff> late_acceptances;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Closing &, const Closing &) = default;
};

} // namespace lastrivet
