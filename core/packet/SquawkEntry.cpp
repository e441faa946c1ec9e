// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/SquawkEntry.h"

#include "core/packet/Chosen.h"
#include "core/packet/InWords.h"

#include <tuple>

namespace lastrivet::packet {

namespace {

SquawkEntry::State stateOf(const SquawkEntry &entry)
{
    if (entry.verified_on)
        return SquawkEntry::State::Verified;
    if (entry.accepted_on)
        return SquawkEntry::State::Accepted;
    return entry.fixed_on ? SquawkEntry::State::Fixed : SquawkEntry::State::Open;
}

/// What ended it, or is on the way to: only what happened by the moment of the packet.
void fillOutcome(SquawkEntry &entry, const Region &region, const Squawk &squawk)
{
    const Records &records = region.records();
    entry.fixed_on = region.ifHappened(squawk.fixed_on);
    if (entry.fixed_on) {
        entry.correction = squawk.correction;
        entry.fixed_by = personName(records, squawk.fixed_by);
    }
    entry.verified_on = region.ifHappened(squawk.verified_on);
    if (entry.verified_on)
        entry.verified_by = personName(records, squawk.verified_by);
    entry.accepted_on = region.ifHappened(squawk.accepted_on);
    if (entry.accepted_on) {
        entry.accepted_by = personName(records, squawk.accepted_by);
        entry.accepted_basis = squawk.accepted_basis;
    }
    entry.state = stateOf(entry);
}

bool belongs(const Region &region, const Squawk &squawk)
{
    return region.holds(squawk) ||
           (!squawk.needs_access_to.empty() && region.holdsAny(squawk.needs_access_to)) ||
           region.isNamedByBlocker({RecordType::Squawk, squawk.id.value()});
}

} // namespace

SquawkEntry squawkEntry(const Region &region, const Squawk &squawk,
                        const std::vector<Photo> &photos)
{
    const Records &records = region.records();
    SquawkEntry entry;
    entry.id = squawk.id;
    entry.number = squawk.number;
    entry.title = squawk.title;
    entry.detail = squawk.detail;
    entry.part = partName(records, squawk.component_id);
    entry.severity = squawk.severity;
    entry.found_on = squawk.found_on;
    entry.approximate = squawk.approximate;
    entry.found_by = personName(records, squawk.found_by);
    if (const Inspection *inspection = records.findLive(squawk.inspection_id))
        entry.inspection = inspection->reference;
    entry.finding_number = squawk.finding_number;
    entry.verify_by = squawk.verify_by.value_or(SignerRole::Builder);
    entry.repair_plan = squawk.repair_plan;
    entry.repair_options = squawk.repair_options;
    fillOutcome(entry, region, squawk);
    entry.photo_numbers = numbersOf(photos, {RecordType::Squawk, squawk.id.value()});
    return entry;
}

std::vector<SquawkEntry> squawks(const Region &region, const std::vector<Photo> &photos)
{
    const auto takes = [&](const Squawk &squawk) {
        return happened(squawk.found_on, region.asOf()) && belongs(region, squawk);
    };
    const auto place = [&](const Squawk &squawk) {
        const bool isEnded =
            region.ifHappened(squawk.verified_on) || region.ifHappened(squawk.accepted_on);
        return std::tuple{isEnded, squawk.severity};
    };
    std::vector<SquawkEntry> entries;
    for (const Squawk *squawk : chosenFrom(region.records().squawks, takes, place,
                                           [](const Squawk &record) { return record.found_on; }))
        entries.push_back(squawkEntry(region, *squawk, photos));
    return entries;
}

} // namespace lastrivet::packet
