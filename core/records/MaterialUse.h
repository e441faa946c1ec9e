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

namespace lastrivet {

struct Closing;
struct Component;
struct MaterialLot;
struct Person;
struct Step;

/// A use of material lots on a part.
struct MaterialUse {
    static constexpr RecordType type = RecordType::MaterialUse;

    Id<MaterialUse> id;
    /// All lots that went into it: resin and hardener, say.
    IdSet<MaterialLot> lot_ids;
    Id<Component> component_id;
    Id<Step> step_id;
    /// Closings after which it may still be completed: it holds none of them open.
    IdSet<Closing> may_follow;
    std::optional<Moment> used_on;
    /// True when `used_on` is only about right.
    bool approximate = false;
    std::string mix_ratio;
    /// While it cured, in `temperature_unit`.
    std::optional<double> temperature_min;
    std::optional<double> temperature_max;
    TemperatureUnit temperature_unit = TemperatureUnit::Celsius;
    /// Relative, in per cent.
    std::optional<double> humidity;
    /// How long it cures; empty when nobody wrote it down.
    std::optional<Minutes> cure_minutes;
    /// Whether a test sample was kept, and what it showed.
    Sample sample = Sample::None;
    std::optional<Moment> sample_on;
    std::optional<Moment> accepted_on;
    Id<Person> accepted_by;
    std::string accepted_basis;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const MaterialUse &, const MaterialUse &) = default;
};

} // namespace lastrivet
