// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/ToolEntry.h"

#include "core/readiness/CalibrationAt.h"

#include <algorithm>
#include <map>

namespace lastrivet::packet {

namespace {

struct Span {
    std::optional<Moment> first;
    std::optional<Moment> last;
    int uses = 0;
    int uncalibrated = 0;

    void take(Moment moment, bool isUncalibrated)
    {
        ++uses;
        uncalibrated += isUncalibrated ? 1 : 0;
        if (!first || sortsBefore(moment, *first))
            first = moment;
        if (!last || sortsBefore(*last, moment))
            last = moment;
    }
};

std::map<Id<Tool>, Span> usedTools(const Region &region)
{
    std::map<Id<Tool>, Span> used;
    const auto take = [&](Id<Tool> tool, Moment use) {
        used[tool].take(use, wasUncalibrated(region, tool, use));
    };
    for (const Fastener &fastener : region.records().fasteners) {
        if (!fastener.withdrawn_on && region.holds(fastener.component_id) && fastener.tool_id &&
            happened(fastener.torqued_on, region.asOf()))
            take(fastener.tool_id, *fastener.torqued_on);
    }
    for (const Measurement &measurement : region.records().measurements) {
        if (!measurement.withdrawn_on && region.holds(measurement.component_id) &&
            measurement.tool_id && happened(measurement.measured_on, region.asOf()))
            take(measurement.tool_id, *measurement.measured_on);
    }
    return used;
}

ToolEntry entryOf(const Region &region, const Tool &tool, const Span &use)
{
    ToolEntry entry;
    entry.id = tool.id;
    entry.name = tool.name;
    entry.serial_number = tool.serial_number;
    entry.needs_calibration = tool.needs_calibration;
    entry.first_used = use.first;
    entry.last_used = use.last;
    entry.uses = use.uses;
    entry.uncalibrated_uses = use.uncalibrated;
    for (const Tool::Calibration &calibration : tool.calibrations) {
        if (happened(calibration.calibrated_on, region.asOf()))
            entry.calibrations.push_back(
                {calibration.calibrated_on, calibration.due_on,
                 region.records().findLive(calibration.certificate_id) != nullptr});
    }
    return entry;
}

} // namespace

bool wasUncalibrated(const Region &region, Id<Tool> tool, Moment use)
{
    const Tool *record = region.records().findLive(tool);
    return record &&
           readiness::wasUncalibrated(*record, use, [&](const std::optional<Moment> &moment) {
               return happened(moment, region.asOf());
           });
}

std::vector<ToolEntry> tools(const Region &region)
{
    std::vector<ToolEntry> entries;
    for (const auto &[id, use] : usedTools(region)) {
        if (const Tool *tool = region.records().findLive(id))
            entries.push_back(entryOf(region, *tool, use));
    }
    std::stable_sort(entries.begin(), entries.end(),
                     [](const ToolEntry &a, const ToolEntry &b) { return a.name < b.name; });
    return entries;
}

} // namespace lastrivet::packet
