// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Minutes.h"
#include "core/packet/Region.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// One use of one or more lots of material.
struct MaterialEntry {
    struct Lot {
        std::string name;
        std::string specification;
        std::string lot_number;
        std::string supplier;
        std::optional<Moment> expires_on;
        bool has_certificate = false;
        /// True when it was used after its expiry.
        bool was_expired = false;
    };

    Id<MaterialUse> id;
    std::string part;
    std::vector<Lot> lots;
    std::optional<Moment> used_on;
    bool approximate = false;
    std::string mix_ratio;
    std::optional<double> temperature_min;
    std::optional<double> temperature_max;
    TemperatureUnit temperature_unit = TemperatureUnit::Celsius;
    /// In percent.
    std::optional<double> humidity;
    std::optional<Minutes> cure_minutes;
    Sample sample = Sample::None;
    std::optional<Moment> accepted_on;
    std::string accepted_by;
    std::string accepted_basis;
};

/// Material used in the region, by part, then by date.
std::vector<MaterialEntry> materials(const Region &region);

} // namespace lastrivet::packet
