// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/MaterialEntry.h"

#include "core/packet/Chosen.h"
#include "core/packet/InWords.h"

namespace lastrivet::packet {

namespace {

MaterialEntry::Lot lotOf(const Region &region, const MaterialUse &use, const MaterialLot &record)
{
    MaterialEntry::Lot lot;
    lot.name = record.name;
    lot.specification = record.specification;
    lot.lot_number = record.lot_number;
    lot.supplier = record.supplier;
    lot.expires_on = record.expires_on;
    lot.has_certificate = region.records().findLive(record.certificate_id) != nullptr;
    lot.was_expired = use.used_on && record.expires_on && after(*use.used_on, *record.expires_on);
    return lot;
}

MaterialEntry entryOf(const Region &region, const MaterialUse &use)
{
    const Records &records = region.records();
    MaterialEntry entry;
    entry.id = use.id;
    entry.part = partName(records, use.component_id);
    for (const Id<MaterialLot> id : use.lot_ids) {
        if (const MaterialLot *lot = records.findLive(id))
            entry.lots.push_back(lotOf(region, use, *lot));
    }
    entry.used_on = use.used_on;
    entry.approximate = use.approximate;
    entry.mix_ratio = use.mix_ratio;
    entry.temperature_min = use.temperature_min;
    entry.temperature_max = use.temperature_max;
    entry.temperature_unit = use.temperature_unit;
    entry.humidity = use.humidity;
    entry.cure_minutes = use.cure_minutes;
    const bool isTested = use.sample == Sample::Good || use.sample == Sample::Failed;
    const bool isTestAhead = isTested && use.sample_on && !region.ifHappened(use.sample_on);
    entry.sample = isTestAhead ? Sample::Kept : use.sample;
    entry.accepted_on = region.ifHappened(use.accepted_on);
    if (entry.accepted_on) {
        entry.accepted_by = personName(records, use.accepted_by);
        entry.accepted_basis = use.accepted_basis;
    }
    return entry;
}

} // namespace

std::vector<MaterialEntry> materials(const Region &region)
{
    std::vector<MaterialEntry> entries;
    for (const MaterialUse *use : chosenByPart(
             region, region.records().material_uses,
             [&](const MaterialUse &record) { return happened(record.used_on, region.asOf()); },
             [](const MaterialUse &record) { return record.used_on; }))
        entries.push_back(entryOf(region, *use));
    return entries;
}

} // namespace lastrivet::packet
