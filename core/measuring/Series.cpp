// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measuring/Series.h"

#include "core/readiness/LatestOf.h"
#include "core/readiness/Limits.h"

#include <algorithm>

namespace lastrivet::measuring {

MeasurementState stateOf(const Measurement &measurement, const Records &records, Moment asOf)
{
    if (!measurement.value || !happened(measurement.measured_on, asOf))
        return MeasurementState::ToMeasure;
    if (!readiness::isOutside(*measurement.value, measurement.minimum, measurement.maximum))
        return MeasurementState::Inside;
    if (happened(measurement.accepted_on, asOf))
        return MeasurementState::Accepted;
    const auto latest = readiness::latestOf(seriesOf(measurement, records, asOf),
                                            [](const Measurement &m) { return *m.measured_on; });
    return latest && latest->id == measurement.id ? MeasurementState::Outside
                                                  : MeasurementState::Repeated;
}

std::vector<const Measurement *> seriesOf(const Measurement &measurement, const Records &records,
                                          Moment asOf)
{
    std::vector<const Measurement *> series;
    for (const Measurement &other : records.measurements) {
        if (!other.withdrawn_on && other.component_id == measurement.component_id &&
            other.what == measurement.what && other.value && happened(other.measured_on, asOf))
            series.push_back(&other);
    }
    std::stable_sort(series.begin(), series.end(), [](const Measurement *a, const Measurement *b) {
        return sortsBefore(*a->measured_on, *b->measured_on);
    });
    return series;
}

} // namespace lastrivet::measuring
