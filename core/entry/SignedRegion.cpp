// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/SignedRegion.h"

#include <algorithm>

namespace lastrivet::entry {

namespace {

bool isSigned(const Records &records, Id<Closing> closing)
{
    return std::ranges::any_of(records.sign_offs, [&](const SignOff &signOff) {
        const HoldPoint *point = records.findLive(signOff.hold_point_id);
        return !signOff.withdrawn_on && signOff.result != SignOffResult::Rejected && point &&
               point->closing_id == closing;
    });
}

} // namespace

IdSet<Closing> signedAndOpen(const Records &records, const readiness::Answer &answer,
                             Id<Component> part)
{
    IdSet<Closing> found;
    for (const auto &closing : answer.closings) {
        if (part && !isClosed(closing.state) && std::ranges::binary_search(closing.reach, part) &&
            isSigned(records, closing.id))
            found.push_back(closing.id);
    }
    return found;
}

Id<Step> closingStep(const Records &records, const IdSet<Closing> &closings)
{
    const auto step = std::ranges::find_if(records.steps, [&](const Step &known) {
        return known.closes && !known.withdrawn_on && !known.done_on && !known.dropped_on &&
               std::ranges::binary_search(closings, known.closes);
    });
    return step == records.steps.end() ? Id<Step>{} : step->id;
}

} // namespace lastrivet::entry
