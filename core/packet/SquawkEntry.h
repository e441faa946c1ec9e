// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Photo.h"
#include "core/packet/Region.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// A squawk with what was done about it.
struct SquawkEntry {
    enum class State { Open, Fixed, Verified, Accepted };

    Id<Squawk> id;
    std::string number;
    std::string title;
    std::string detail;
    std::string part;
    Severity severity = Severity::Workmanship;
    State state = State::Open;
    std::optional<Moment> found_on;
    bool approximate = false;
    std::string found_by;
    std::string inspection;
    std::string finding_number;
    SignerRole verify_by = SignerRole::Builder;
    std::string repair_plan;
    std::vector<Squawk::RepairOption> repair_options;
    std::string correction;
    std::optional<Moment> fixed_on;
    std::string fixed_by;
    std::optional<Moment> verified_on;
    std::string verified_by;
    std::optional<Moment> accepted_on;
    std::string accepted_by;
    std::string accepted_basis;
    std::vector<int> photo_numbers;
};

/// One squawk as it stood at the moment of the region's answer.
SquawkEntry squawkEntry(const Region &region, const Squawk &squawk,
                        const std::vector<Photo> &photos);
/// Squawks of the region, those that need access to it, and those that its blockers name: open ones
/// first, by severity, then by the day found.
std::vector<SquawkEntry> squawks(const Region &region, const std::vector<Photo> &photos);

} // namespace lastrivet::packet
