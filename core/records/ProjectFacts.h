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

struct Person;

/// What is known of the whole project; there is one.
struct ProjectFacts {
    static constexpr RecordType type = RecordType::Project;

    std::string name;
    std::string aircraft_type;
    std::string designer;
    std::string model;
    std::string registration;
    std::string serial_number;
    std::string kit_number;
    /// The number of the authority's file on this project.
    std::string authority_file;
    /// Of the whole aeroplane, in `weight_unit`.
    std::optional<double> maximum_weight;
    std::optional<WeightUnit> weight_unit;
    std::optional<Origin> origin;
    /// The id of the rule profile that the project goes by.
    std::string profile;
    /// Whose work it is where a log entry names nobody.
    Id<Person> builder_id;
    std::string builder_address;
    std::optional<Moment> started_on;
    /// An IANA name; all moments are local time there.
    std::string time_zone = "UTC";
    /// An ISO 4217 code, for amounts that name none.
    std::string currency;
    /// For showing and for typing without a unit.
    UnitSystem units = UnitSystem::Metric;
    std::string note;

    friend bool operator==(const ProjectFacts &, const ProjectFacts &) = default;
};

} // namespace lastrivet
