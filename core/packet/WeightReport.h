// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/balance/EmptyWeight.h"
#include "core/balance/Loading.h"
#include "core/packet/Aircraft.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// The weight and balance report: how it was weighed, what it came to, what may be loaded.
struct WeightReport {
    /// One scale: what it showed, and which instrument it was.
    struct Scale {
        std::string point;
        double reading = 0;
        double tare = 0;
        double arm = 0;
        /// Name and serial number of the scale, and until when its calibration holds.
        std::string tool;
        std::optional<Moment> calibrated_until;
        /// It needs calibration, and had none that held on the day.
        bool was_uncalibrated = false;
    };
    struct Case {
        std::string name;
        std::vector<balance::Item> items;
        balance::Balance sum;
        /// Nothing without limits to hold it against.
        std::optional<bool> is_within;
        /// Instead of a sum.
        std::optional<Message> refusal;
    };
    struct EquipmentLine {
        std::string name;
        std::string maker;
        std::string part_number;
        std::string serial_number;
        std::optional<double> weight;
        std::optional<double> arm;
        std::optional<Moment> fitted_on;
        std::optional<Moment> removed_on;
    };
    /// Whether a weighing has what changed the weight in it.
    enum class Weighed {
        NotYet, ///< the aeroplane has not been weighed
        In,     ///< it was there when the aeroplane was weighed
        NotIn,  ///< it came after the weighing, so that no scale has seen it
    };
    /// A deviation that says how it changes the weight, or a bulletin that was complied with after
    /// the weighing and says nothing of weights: to look at before the next flight.
    struct Effect {
        std::string title;
        std::optional<double> weight;
        std::optional<double> arm;
        std::optional<Moment> when;
        Weighed weighed = Weighed::NotYet;
        RecordType type = RecordType::Deviation;
    };
    /// The limits in the report's units.
    struct Limits {
        std::vector<balance::Item> corners;
        std::string source;
    };

    Aircraft aircraft;
    /// None in a report that was not made yet.
    std::optional<Moment> as_of;
    balance::Units units;
    std::optional<Weighing> weighing;
    std::vector<Scale> scales;
    std::optional<balance::EmptyWeight> empty;
    /// Why there is no empty weight.
    std::optional<Message> refusal;
    std::optional<double> percent_mac;
    std::optional<balance::Chord> chord;
    std::optional<double> most_weight;
    std::vector<EquipmentLine> equipment;
    /// Of these what was fitted or removed since the weighing and has no weight or no arm: it is
    /// not in the sum.
    std::vector<EquipmentLine> not_in_sum;
    std::vector<Effect> effects;
    std::vector<Case> cases;
    std::vector<balance::Load> loads;
    std::optional<balance::Extremes> extremes;
    std::optional<Message> no_extremes;
    std::optional<Limits> limits;
    std::optional<bool> forward_is_within;
    std::optional<bool> aft_is_within;
    std::vector<Profile::Caution> cautions;

    /// Loadings that lie outside the limits.
    std::size_t casesOutside() const;
    /// Of the farthest forward and the farthest aft those that lie outside the limits: 0 to 2.
    std::size_t extremesOutside() const;
    /// Deviations that change the weight and were built after the weighing.
    std::size_t builtSinceWeighing() const;
};

/// In the units of the latest weighing; without one in those that the project's person reads.
WeightReport weightReport(const Records &records, const Profile &profile, Moment asOf);

} // namespace lastrivet::packet
