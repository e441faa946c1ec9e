// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/balance/Balance.h"
#include "core/balance/Units.h"
#include "core/records/Records.h"

#include <vector>

namespace lastrivet::balance {

/// One line of a weight report.
struct Line {
    enum class Kind {
        Scale,      ///< a scale's reading less its tare
        Correction, ///< something taken off or added
        Fitted,     ///< equipment fitted after the weighing
        Removed,    ///< equipment removed after the weighing; its weight is below zero
    };

    Kind kind = Kind::Scale;
    Item item;
    /// The record that the line comes from.
    RecordRef record{RecordType::Weighing, 0};
};

/// The empty aeroplane, line by line and summed up, in the weighing's units.
struct EmptyWeight {
    Id<Weighing> weighing;
    Units units;
    std::vector<Line> lines;
    Balance sum;
    /// Equipment fitted or removed after the weighing that has no weight or no arm: it is not in
    /// the sum.
    std::vector<Id<Equipment>> without_weight;
};

/// What one weighing came to: readings less tare, and its corrections. Refuses a weighing without
/// readings, a tare below zero, and a reading below its tare.
Result<EmptyWeight, Message> weighed(const Weighing &weighing);

/// Of live weighings not after `asOf` the latest: the greatest id among those that no other is
/// after. Null when nothing was weighed.
const Weighing *latestWeighing(const Records &records, Moment asOf);

/// The latest weighing not after `asOf`, with the equipment that was fitted and removed between it
/// and `asOf`. Says so when nothing was weighed.
Result<EmptyWeight, Message> emptyWeight(const Records &records, Moment asOf);

/// A deviation that says how it changes the weight: to be borne in mind, and contained in the next
/// weighing.
struct WeightEffect {
    RecordRef record{RecordType::Deviation, 0};
    double weight = 0;
    std::optional<WeightUnit> weight_unit;
    std::optional<double> arm;
    std::optional<ArmUnit> arm_unit;
};

/// Deviations that were built and not undone by `asOf` and say how much they weigh, by id.
std::vector<WeightEffect> weightEffects(const Records &records, Moment asOf);

} // namespace lastrivet::balance
