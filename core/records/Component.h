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

/// A part of the aeroplane, in the tree of parts.
struct Component {
    static constexpr RecordType type = RecordType::Component;

    Id<Component> id;
    Id<Component> parent_id;
    /// Its place among the parts of the same parent.
    std::optional<std::int64_t> position;
    /// Short and unique in the project, where it has one: "LW-R3".
    std::string code;
    std::string name;
    ComponentKind kind = ComponentKind::Part;
    std::optional<Construction> construction;
    std::string part_number;
    std::string serial_number;
    /// Where in the picture of the aeroplane it lies, in words.
    std::string zone;
    /// The drawing or page of the manual.
    std::string plan_ref;
    std::string place;
    std::string shelf;
    /// Set for structure that no closing will ever enclose: why that is right.
    std::string never_enclosed_why;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Component &, const Component &) = default;
};

} // namespace lastrivet
