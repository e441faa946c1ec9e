// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/DeviationEntry.h"

#include "core/packet/Chosen.h"
#include "core/packet/InWords.h"

namespace lastrivet::packet {

namespace {

DeviationEntry entryOf(const Region &region, const Deviation &deviation,
                       const std::vector<Photo> &photos)
{
    const Records &records = region.records();
    DeviationEntry entry;
    entry.id = deviation.id;
    entry.number = deviation.number;
    entry.title = deviation.title;
    for (const Id<Component> part : deviation.component_ids)
        entry.parts.push_back(partName(records, part));
    entry.drawing_ref = deviation.drawing_ref;
    entry.built_as = deviation.built_as;
    entry.reason = deviation.reason;
    entry.alternatives = deviation.alternatives;
    entry.raised_on = deviation.raised_on;
    entry.asked_on = region.ifHappened(deviation.asked_on);
    entry.asked_of = personName(records, deviation.asked_of);
    entry.decided_on = region.ifHappened(deviation.decided_on);
    if (entry.decided_on) {
        entry.decision = deviation.decision;
        entry.decided_by = personName(records, deviation.decided_by);
        entry.basis = deviation.basis;
    }
    entry.built_on = region.ifHappened(deviation.built_on);
    entry.undone_on = region.ifHappened(deviation.undone_on);
    entry.photo_numbers = numbersOf(photos, {RecordType::Deviation, deviation.id.value()});
    return entry;
}

} // namespace

std::vector<DeviationEntry> deviations(const Region &region, const std::vector<Photo> &photos)
{
    const auto takes = [&](const Deviation &deviation) {
        return happened(deviation.raised_on, region.asOf()) &&
               (region.holdsAny(deviation.component_ids) ||
                region.isNamedByBlocker({RecordType::Deviation, deviation.id.value()}));
    };
    std::vector<DeviationEntry> entries;
    for (const Deviation *deviation : chosenFrom(
             region.records().deviations, takes, [](const Deviation &) { return 0; },
             [](const Deviation &record) { return record.raised_on; }))
        entries.push_back(entryOf(region, *deviation, photos));
    return entries;
}

} // namespace lastrivet::packet
