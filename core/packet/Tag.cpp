// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/Tag.h"

#include "core/packet/InWords.h"
#include "core/readiness/Sentences.h"
#include "core/today/WorkOrder.h"

#include <algorithm>
#include <cstddef>

namespace lastrivet::packet {

namespace {

using readiness::ClosingAnswer;

bool isOfAirworthiness(const readiness::Blocker &blocker, const Records &records)
{
    const Squawk *squawk = blocker.rule == readiness::Rule::OpenSquawk
                               ? records.find(Id<Squawk>{blocker.record.id})
                               : nullptr;
    return squawk && squawk->severity == Severity::Airworthiness;
}

Tag tagOf(const Records &records, const ClosingAnswer &answer, const Closing &closing, Moment asOf,
          const today::WorkOrder &order)
{
    Tag tag{closing.id, closing.title, partPath(records, closing.component_id), answer.state, {},
            0,          asOf};
    auto blockers = order.nearestFirst(answer);
    // Few lines fit on a tag, and what touches airworthiness must not be among those left out.
    const auto rest = std::stable_partition(blockers.begin(), blockers.end(),
                                            [&](const readiness::Blocker *blocker) {
                                                return blocker->weight == readiness::Weight::Must &&
                                                       isOfAirworthiness(*blocker, records);
                                            });
    tag.of_airworthiness = std::size_t(rest - blockers.begin());
    for (const readiness::Blocker *blocker : blockers) {
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
