// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/ToolEntry.h"

#include <algorithm>
#include <map>

namespace lastrivet::packet {

namespace {

struct Span {
    std::optional<Moment> first;
    std::optional<Moment> last;

    void take(Moment moment)
    {
        if (!first || sortsBefore(moment, *first))
            first = moment;
        if (!last || sortsBefore(*last, moment))
            last = moment;
    }
};

std::map<Id<Tool>, Span> usedTools(const Region &region)
{
    std::map<Id<Tool>, Span> used;
    for (const Fastener &fastener : region.records().fasteners) {
        if (!fastener.withdrawn_on && region.holds(fastener.component_id) && fastener.tool_id &&
            happened(fastener.torqued_on, region.asOf()))
            used[fastener.tool_id].take(*fastener.torqued_on);
    }
    for (const Measurement &measurement : region.records().measurements) {
        if (!measurement.withdrawn_on && region.holds(measurement.component_id) &&
            measurement.tool_id && happened(measurement.measured_on, region.asOf()))
            used[measurement.tool_id].take(*measurement.measured_on);
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
    for (const Tool::Calibration &calibration : tool.calibrations) {
        if (happened(calibration.calibrated_on, region.asOf()))
            entry.calibrations.push_back(
                {calibration.calibrated_on, calibration.due_on,
                 region.records().findLive(calibration.certificate_id) != nullptr});
    }
    return entry;
}

} // namespace

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
