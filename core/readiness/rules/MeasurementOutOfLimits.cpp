// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Limits.h"
#include "core/readiness/rules/Rules.h"

namespace lastrivet::readiness::rules {

namespace {

/// The latest of all measurements of the same thing by the moment judged.
const Measurement *latest(const Judgement &judgement, const Measurement &measurement)
{
    std::vector<const Measurement *> measured;
    for (const auto &repeat : judgement.ground().repeats(measurement)) {
        if (judgement.counts(repeat.record->measured_on))
            measured.push_back(repeat.record);
    }
    return latestOf(measured, [](const Measurement &m) { return *m.measured_on; });
}

} // namespace

void measurementOutOfLimits(const Judgement &judgement, Findings &findings)
{
    judgement.forEachIn(judgement.ground().measurements, [&](const OfStep<Measurement> &entry) {
        const Measurement &measurement = *entry.record;
        if (measurement.value && judgement.counts(measurement.measured_on) &&
            isOutside(*measurement.value, measurement.minimum, measurement.maximum) &&
            !judgement.counts(measurement.accepted_on) && judgement.concerns(entry) &&
            latest(judgement, measurement) == &measurement)
            findings.must(measurement);
    });
}

} // namespace lastrivet::readiness::rules
