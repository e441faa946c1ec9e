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
    /// What people call it by; unique, and never given anew.
    std::string number;
    /// None when it is about papers.
    Id<Component> component_id;
    std::string title;
    std::string detail;
    Severity severity = Severity::Workmanship;
    std::optional<Moment> found_on;
    /// True when `found_on` is only about right.
    bool approximate = false;
    Id<Person> found_by;
    /// The inspection at which it was found.
    Id<Inspection> inspection_id;
    /// Its number on the inspector's sheet.
    std::string finding_number;
    /// Who has to verify the correction, at least; the builder when empty.
    std::optional<SignerRole> verify_by;
    /// Parts that the repair needs access to, where that is not `component_id`.
    IdSet<Component> needs_access_to;
    /// Closings inside the parts above that it is known not to concern.
    IdSet<Closing> not_inside;
    std::optional<Minutes> estimate_minutes;
    std::string repair_plan;
    std::vector<RepairOption> repair_options;
    /// What was done about it.
    std::string correction;
    std::optional<Moment> fixed_on;
    Id<Person> fixed_by;
    std::optional<Moment> verified_on;
    Id<Person> verified_by;
    std::optional<Moment> accepted_on;
    Id<Person> accepted_by;
    /// Why it may stay as it is.
    std::string accepted_basis;
    /// Where an old squawk was taken from: "paper log p. 34".
    std::string source;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Squawk &, const Squawk &) = default;
};

} // namespace lastrivet
