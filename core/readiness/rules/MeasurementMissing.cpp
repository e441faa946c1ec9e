// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/rules/Rules.h"

#include <algorithm>

namespace lastrivet::readiness::rules {

void measurementMissing(const Judgement &judgement, Findings &findings)
{
    const Ground &ground = judgement.ground();
    judgement.forEachIn(ground.measurements, [&](const OfStep<Measurement> &entry) {
        const Measurement &measurement = *entry.record;
        if (judgement.counts(measurement.measured_on) || !judgement.exists(measurement) ||
            !judgement.concerns(entry))
            return;
        const auto &repeats = ground.repeats(measurement);
        const bool wasMeasured =
            std::any_of(repeats.begin(), repeats.end(), [&](const OfStep<Measurement> &other) {
                return judgement.counts(other.record->measured_on);
            });
        if (!wasMeasured)
            findings.must(measurement);
    });
}

} // namespace lastrivet::readiness::rules
