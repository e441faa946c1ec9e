// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Minutes.h"
#include "core/packet/Packet.h"
#include "core/packet/WeightReport.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// The aircraft as it was built, for whoever owns and looks after it next.
///
/// Nothing in it says what anything cost, shows a receipt, or tells where people live or how they
/// are reached.
struct HandOver {
    /// A closing that hides a part, and how it stands.
    struct Hidden {
        std::string closing;
        readiness::State state = readiness::State::Hold;
        bool begun = true;
    };
    struct Part {
        int depth = 0;
        std::string code;
        std::string name;
        std::string part_number;
        std::string serial_number;
        std::string plan_ref;
        /// The closings in whose reach it lies, the one that hides least first.
        std::vector<Hidden> lies_within;
    };
    struct Fitted {
        std::string name;
        std::string maker;
        std::string part_number;
        std::string serial_number;
        std::string part;
        std::optional<Moment> fitted_on;
        std::optional<Moment> removed_on;
    };
    struct PartHours {
        std::string part;
        Minutes minutes;
        std::int64_t sessions = 0;
    };

    std::vector<Part> parts;
    std::vector<Fitted> equipment;
    /// Hours of each part at the top of the tree with everything below it, then of no part; these
    /// and all that follow of work are of what had begun by the moment of the book.
    std::vector<PartHours> hours;
    /// By the clock, as the hours of the parts.
    Minutes total;
    /// Of all who worked, as the hours of the people.
    Minutes worker_total;
    std::optional<Moment> first_work;
    std::optional<Moment> last_work;
    /// Aircraft, closings, photographs of the structure, findings, hardware, materials and people
    /// of the whole aircraft; without what an inspector is asked.
    Packet whole;
    /// The weighing, the empty weight and its centre of gravity, and what may be loaded.
    WeightReport weight;

    /// Anything of the weight is on record besides the equipment.
    bool hasWeight() const { return weight.weighing || weight.limits || !weight.cases.empty(); }
};

HandOver handOver(const Records &records, const Profile &profile, const readiness::Answer &answer);

} // namespace lastrivet::packet
