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

struct Closing;
struct Component;
struct Inspection;
struct Person;

/// A defect: found, fixed, verified or accepted.
struct Squawk {
    static constexpr RecordType type = RecordType::Squawk;

    /// A way to repair it.
    struct RepairOption {
        std::string title;
        std::string pros;
        std::string cons;
        bool chosen = false;

        friend bool operator==(const RepairOption &, const RepairOption &) = default;
    };

    Id<Squawk> id;
    std::string number;
    Id<Component> component_id;
    std::string title;
    std::string detail;
    Severity severity = Severity::Workmanship;
    std::optional<Moment> found_on;
    bool approximate = false;
    Id<Person> found_by;
    Id<Inspection> inspection_id;
    std::string finding_number;
    std::optional<SignerRole> verify_by;
    IdSet<Component> needs_access_to;
    IdSet<Closing> not_inside;
    std::optional<Minutes> estimate_minutes;
    std::string repair_plan;
    std::vector<RepairOption> repair_options;
    std::string correction;
    std::optional<Moment> fixed_on;
    Id<Person> fixed_by;
    std::optional<Moment> verified_on;
    Id<Person> verified_by;
    std::optional<Moment> accepted_on;
    Id<Person> accepted_by;
    std::string accepted_basis;
    std::string source;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Squawk &, const Squawk &) = default;
};

} // namespace lastrivet
