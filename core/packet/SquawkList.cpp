// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/SquawkList.h"

namespace lastrivet::packet {

SquawkList squawkList(const Records &records, const Profile &profile,
                      const readiness::Answer &answer,
                      const std::vector<readiness::ListedSquawk> &listed,
                      std::vector<Message> filter)
{
    const Region nowhere(records, answer, {});
    SquawkList list{
        aircraftOf(records, profile), answer.as_of, std::move(filter), {}, profile.cautions};
    for (const readiness::ListedSquawk &known : listed) {
        const Squawk &squawk = *records.find(known.id);
        SquawkList::Entry entry{
            squawkEntry(nowhere, squawk, {}), known.reachable, {}, squawk.estimate_minutes};
        for (const Id<Closing> id : known.closings) {
            if (const Closing *closing = records.find(id))
                entry.closings.push_back(closing->title);
        }
        list.entries.push_back(std::move(entry));
    }
    return list;
}

} // namespace lastrivet::packet
