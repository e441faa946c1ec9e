// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/FastenerEntry.h"

#include "core/packet/Chosen.h"
#include "core/packet/InWords.h"
#include "core/packet/ToolEntry.h"
#include "core/readiness/Limits.h"
#include "core/records/LockedByHand.h"

namespace lastrivet::packet {

namespace {

bool isThere(const Region &region, const Fastener &fastener)
{
    const auto isPast = [&](const std::optional<Moment> &moment) {
        return happened(moment, region.asOf());
    };
    return !isPast(fastener.removed_on) &&
           (!fastener.planned_on || isPast(fastener.planned_on) || isPast(fastener.fitted_on) ||
            isPast(fastener.torqued_on));
}

std::string toolName(const Records &records, Id<Tool> id)
{
    const Tool *tool = records.find(id);
    return tool ? tool->name : std::string{};
}

} // namespace

FastenerEntry fastenerEntry(const Region &region, const Fastener &fastener)
{
    const Records &records = region.records();
    FastenerEntry entry;
    entry.id = fastener.id;
    entry.part = partName(records, fastener.component_id);
    entry.place = fastener.place;
    entry.hardware = fastener.hardware.empty() ? fastener.thread : fastener.hardware;
    entry.quantity = fastener.quantity;
    entry.torque_min = fastener.torque_min;
    entry.torque_max = fastener.torque_max;
    entry.unit = fastener.torque_unit;
    entry.fitted_on = region.ifHappened(fastener.fitted_on);
    entry.torqued_on = region.ifHappened(fastener.torqued_on);
    if (entry.torqued_on) {
        entry.torque_value = fastener.torque_value;
        entry.torque_drag = fastener.torque_drag;
        entry.tool = toolName(records, fastener.tool_id);
        entry.was_tool_uncalibrated = wasUncalibrated(region, fastener.tool_id, *entry.torqued_on);
    }
    entry.marked_on = region.ifHappened(fastener.marked_on);
    entry.locking = fastener.locking;
    entry.is_locked_by_hand = isLockedByHand(fastener.locking);
    entry.locked_on = region.ifHappened(fastener.locked_on);
    entry.accepted_on = region.ifHappened(fastener.accepted_on);
    if (entry.accepted_on) {
        entry.accepted_by = personName(records, fastener.accepted_by);
        entry.accepted_basis = fastener.accepted_basis;
    }
    return entry;
}

std::optional<double> FastenerEntry::netTorque() const
{
    return readiness::netTorque(torque_value, torque_drag);
}

bool FastenerEntry::isOutOfLimits() const
{
    return readiness::isTorqueOutside(*this);
}

std::vector<FastenerEntry> fasteners(const Region &region)
{
    std::vector<FastenerEntry> entries;
    for (const Fastener *fastener : chosenByPart(
             region, region.records().fasteners,
             [&](const Fastener &record) { return isThere(region, record); },
             [](const Fastener &) { return std::optional<Moment>{}; }))
        entries.push_back(fastenerEntry(region, *fastener));
    return entries;
}

} // namespace lastrivet::packet
