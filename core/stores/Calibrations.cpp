// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stores/Calibrations.h"

#include "core/readiness/CalibrationAt.h"
#include "core/stores/Soon.h"

#include <algorithm>

namespace lastrivet::stores {

namespace {

/// Whether a calibration counts on a day.
auto isOnRecord(Moment asOf)
{
    return [asOf](const std::optional<Moment> &moment) { return happened(moment, asOf); };
}

ToolState stateOf(const Tool &tool, const std::optional<std::int64_t> &daysLeft)
{
    if (!tool.needs_calibration)
        return ToolState::NeedsNone;
    if (!daysLeft)
        return ToolState::NeverCalibrated;
    if (*daysLeft < 0)
        return ToolState::Overdue;
    return *daysLeft <= soonDays ? ToolState::DueSoon : ToolState::InCalibration;
}

void note(ToolStanding &standing, const Tool &tool, RecordRef record, Moment use, Moment asOf)
{
    ++standing.uses;
    if (readiness::wasUncalibrated(tool, use, isOnRecord(asOf)))
        standing.outside.push_back(record);
}

/// Whether the aeroplane stood on it, under one point or several.
bool stoodOn(const Weighing &weighing, const Tool &tool)
{
    const auto &scales = weighing.scale_readings;
    return std::any_of(scales.begin(), scales.end(), [&](const Weighing::ScaleReading &scale) {
        return scale.tool_id == tool.id;
    });
}

} // namespace

ToolStanding standingOf(const Tool &tool, const Records &records, Moment asOf)
{
    ToolStanding standing;
    if (const auto *last = readiness::newestCalibration(tool, isOnRecord(asOf))) {
        standing.calibration = std::size_t(last - tool.calibrations.data());
        standing.has_certificate = records.findLive(last->certificate_id) != nullptr;
        if (last->due_on)
            standing.days_left = (last->due_on->day() - asOf.day()).count();
    }
    standing.state = stateOf(tool, standing.days_left);
    for (const Fastener &fastener : records.fasteners) {
        if (!fastener.withdrawn_on && fastener.tool_id == tool.id &&
            happened(fastener.torqued_on, asOf))
            note(standing, tool, {RecordType::Fastener, fastener.id.value()}, *fastener.torqued_on,
                 asOf);
    }
    for (const Measurement &measurement : records.measurements) {
        if (!measurement.withdrawn_on && measurement.tool_id == tool.id &&
            happened(measurement.measured_on, asOf))
            note(standing, tool, {RecordType::Measurement, measurement.id.value()},
                 *measurement.measured_on, asOf);
    }
    for (const Weighing &weighing : records.weighings) {
        if (!weighing.withdrawn_on && stoodOn(weighing, tool) &&
            happened(weighing.weighed_on, asOf))
            note(standing, tool, {RecordType::Weighing, weighing.id.value()}, *weighing.weighed_on,
                 asOf);
    }
    return standing;
}

} // namespace lastrivet::stores
