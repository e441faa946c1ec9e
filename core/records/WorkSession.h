// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Minutes.h"
#include "core/base/Moment.h"
#include "core/records/RecordType.h"
#include "core/records/Vocabulary.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet {

struct Component;
struct Person;
struct Squawk;
struct Step;

/// A stretch of work, as the log has it. A session without workers counts for the project's
/// builder.
struct WorkSession {
    static constexpr RecordType type = RecordType::WorkSession;

    /// Who worked; null minutes mean the whole session.
    struct Worker {
        Id<Person> person_id;
        std::optional<Minutes> minutes;
        bool paid = false;

        friend bool operator==(const Worker &, const Worker &) = default;
    };

    Id<WorkSession> id;
    std::optional<Moment> began;
    /// True when `began` is only about right.
    bool approximate = false;
    std::optional<Minutes> minutes;
    Id<Component> component_id;
    Id<Step> step_id;
    /// The squawk that was worked on.
    Id<Squawk> squawk_id;
    WorkKind kind = WorkKind::Other;
    std::string place;
    /// Whether it changed something that was signed for before; empty while nobody has said.
    std::optional<bool> changed_inspected;
    /// Empty means the builder of the project.
    std::vector<Worker> workers;
    /// Where an old entry was taken from: "paper log p. 34".
    std::string source;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const WorkSession &, const WorkSession &) = default;
};

} // namespace lastrivet
