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
    /// The parts that it encloses, with all below them.
    IdSet<Component> encloses;
    /// False for what can be opened at any time, as a panel: nothing then has to keep it open.
    bool permanent = true;
    MadeBy made_by = MadeBy::Builder;
    /// How it is closed: riveted, bonded, covered.
    std::string method;
    /// In the order in which they happened: closed, opened, closed …
    std::vector<Event> events;
    /// Sign-offs that accept it as it was closed, after the event.
    IdSet<SignOff> late_acceptances;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Closing &, const Closing &) = default;
};

} // namespace lastrivet
