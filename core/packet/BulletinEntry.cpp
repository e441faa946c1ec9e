// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/BulletinEntry.h"

#include "core/packet/Chosen.h"

namespace lastrivet::packet {

std::vector<BulletinEntry> bulletins(const Region &region)
{
    const auto takes = [&](const Bulletin &bulletin) {
        return happened(bulletin.received_on, region.asOf()) &&
               (region.holdsAny(bulletin.component_ids) ||
                region.isNamedByBlocker({RecordType::Bulletin, bulletin.id.value()}));
    };
    std::vector<BulletinEntry> entries;
    for (const Bulletin *bulletin : chosenFrom(
             region.records().bulletins, takes, [](const Bulletin &) { return 0; },
             [](const Bulletin &record) { return record.received_on; })) {
        BulletinEntry entry{
            bulletin->id,      bulletin->number,      bulletin->kind,
            bulletin->title,   bulletin->issuer,      bulletin->mandatory,
            bulletin->applies, bulletin->received_on, region.ifHappened(bulletin->complied_on),
            bulletin->basis};
        entries.push_back(std::move(entry));
    }
    return entries;
}

} // namespace lastrivet::packet
