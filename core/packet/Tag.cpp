// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/Tag.h"

#include "core/packet/InWords.h"
#include "core/readiness/Sentences.h"
#include "core/today/WorkOrder.h"

namespace lastrivet::packet {

namespace {

using readiness::ClosingAnswer;

Tag tagOf(const Records &records, const ClosingAnswer &answer, const Closing &closing, Moment asOf,
          const today::WorkOrder &order)
{
    Tag tag{closing.id, closing.title, partPath(records, closing.component_id), answer.state,
            {},         asOf};
    for (const readiness::Blocker *blocker : order.nearestFirst(answer)) {
        if (blocker->weight == readiness::Weight::Must)
            tag.waits_for.push_back(readiness::sentence(*blocker, records));
    }
    return tag;
}

} // namespace

std::vector<Tag> tags(const Records &records, const readiness::Answer &answer,
                      const IdSet<Closing> &chosen)
{
    const today::WorkOrder order(answer);
    std::vector<Tag> tags;
    for (const Id<Closing> id : chosen) {
        const ClosingAnswer *known = answer.closing(id);
        const Closing *closing = records.findLive(id);
        if (known && closing && readiness::mustStayOpen(known->state))
            tags.push_back(tagOf(records, *known, *closing, answer.as_of, order));
    }
    return tags;
}

IdSet<Closing> closingsToTag(const readiness::Answer &answer)
{
    IdSet<Closing> closings;
    for (const ClosingAnswer &closing : answer.closings) {
        if (closing.begun && readiness::mustStayOpen(closing.state))
            closings.push_back(closing.id);
    }
    return closings;
}

} // namespace lastrivet::packet
