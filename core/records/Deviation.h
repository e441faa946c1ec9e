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
struct Media;
struct Person;

/// Something built otherwise than drawn.
struct Deviation {
    static constexpr RecordType type = RecordType::Deviation;

    Id<Deviation> id;
    std::string number;
    /// The parts it is about; without any, only the closing of the whole aircraft looks at it.
    IdSet<Component> component_ids;
    /// Closings inside the parts above that it is known not to concern.
    IdSet<Closing> not_inside;
    std::string title;
    std::string drawing_ref;
    std::string built_as;
    std::string reason;
    std::string alternatives;
    std::optional<Moment> raised_on;
    std::optional<Moment> asked_on;
    Id<Person> asked_of;
    std::optional<Moment> decided_on;
    Id<Person> decided_by;
    std::optional<Decision> decision;
    /// What the decision rests on.
    std::string basis;
    std::optional<Moment> built_on;
    std::optional<Moment> undone_on;
    /// In `weight_unit`; below zero where it is lighter.
    std::optional<double> weight_change;
    std::optional<WeightUnit> weight_unit;
    /// Of the change in weight, in `arm_unit`.
    std::optional<double> arm;
    std::optional<ArmUnit> arm_unit;
    IdSet<Media> media_ids;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Deviation &, const Deviation &) = default;
};

} // namespace lastrivet
