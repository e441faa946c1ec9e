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

struct HoldPoint;
struct Media;
struct Person;

/// A visit, from asking for it to its completed report.
struct Inspection {
    static constexpr RecordType type = RecordType::Inspection;

    Id<Inspection> id;
    InspectionKind kind = InspectionKind::PreCover;
    std::string reference;
    std::optional<Moment> asked_on;
    /// The day agreed upon.
    std::optional<Moment> planned_for;
    std::optional<Moment> held_on;
    std::optional<Moment> completed_on;
    std::optional<Moment> cancelled_on;
    Id<Person> inspector_id;
    /// Who was there besides the inspector.
    IdSet<Person> present;
    std::string place;
    std::string report_number;
    /// The hold points that it is held for.
    IdSet<HoldPoint> hold_point_ids;
    IdSet<Media> media_ids;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Inspection &, const Inspection &) = default;
};

} // namespace lastrivet
