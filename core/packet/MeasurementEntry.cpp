// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/MeasurementEntry.h"

#include "core/packet/Chosen.h"
#include "core/packet/InWords.h"
#include "core/packet/ToolEntry.h"

namespace lastrivet::packet {

namespace {

MeasurementEntry entryOf(const Region &region, const Measurement &measurement)
{
    const Records &records = region.records();
    MeasurementEntry entry;
    entry.id = measurement.id;
    entry.part = partName(records, measurement.component_id);
    entry.what = measurement.what;
    entry.unit = measurement.unit;
    entry.minimum = measurement.minimum;
    entry.maximum = measurement.maximum;
    entry.measured_on = region.ifHappened(measurement.measured_on);
    if (entry.measured_on) {
        entry.value = measurement.value;
        if (const Tool *tool = records.find(measurement.tool_id))
            entry.tool = tool->name;
        entry.was_tool_uncalibrated =
            wasUncalibrated(region, measurement.tool_id, *entry.measured_on);
    }
    entry.accepted_on = region.ifHappened(measurement.accepted_on);
    if (entry.accepted_on) {
        entry.accepted_by = personName(records, measurement.accepted_by);
        entry.accepted_basis = measurement.accepted_basis;
    }
    return entry;
}

} // namespace

std::vector<MeasurementEntry> measurements(const Region &region)
{
    const auto isThere = [&](const Measurement &measurement) {
        return !measurement.planned_on || happened(measurement.planned_on, region.asOf()) ||
               happened(measurement.measured_on, region.asOf());
    };
    std::vector<MeasurementEntry> entries;
    for (const Measurement *measurement :
         chosenByPart(region, region.records().measurements, isThere,
                      [](const Measurement &record) { return record.measured_on; }))
        entries.push_back(entryOf(region, *measurement));
    return entries;
}

} // namespace lastrivet::packet
