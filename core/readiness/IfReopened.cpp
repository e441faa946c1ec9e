// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/IfReopened.h"

#include "core/readiness/Lists.h"
#include "core/readiness/Readiness.h"
#include "core/readiness/SignOffs.h"

#include <algorithm>

namespace lastrivet::readiness {

namespace {

/// The latest sign-off of a hold point when it is an accepted one, else null.
const SignOff *signatureAt(const Records &records, Id<HoldPoint> point, Moment asOf)
{
    const SignOff *latest = latestSignOff(records, point, asOf);
    return latest && isAccepted(*latest) ? latest : nullptr;
}

bool isOutdated(const ClosingAnswer &closing, Id<HoldPoint> point)
{
    return std::any_of(
        closing.blockers.begin(), closing.blockers.end(), [point](const Blocker &blocker) {
            return blocker.rule == Rule::OutdatedSignOff && blocker.record.id == point.value();
        });
}

void addSignatures(IfReopened &effect, const Records &records, const Answer &before,
                   const Answer &after)
{
    for (const HoldPoint &point : records.hold_points) {
        const ClosingAnswer *then = after.closing(point.closing_id);
        const ClosingAnswer *now = before.closing(point.closing_id);
        if (point.withdrawn_on || !then || !now || !isOutdated(*then, point.id))
            continue;
        // Of a closed closing the blockers are those at its closing; it counts as signed now.
        const bool wasOutdated = !isClosed(now->state) && isOutdated(*now, point.id);
        const SignOff *signOff = signatureAt(records, point.id, before.as_of);
        if (!wasOutdated && signOff)
            effect.signatures.push_back({point.id, signOff->id});
    }
}

bool isOutOfReach(const Answer &answer, RecordRef record)
{
    return std::any_of(answer.out_of_reach.begin(), answer.out_of_reach.end(),
                       [record](const RecordAndClosings &row) { return row.record == record; });
}

} // namespace

IfReopened ifReopened(const Records &records, const Profile &profile, Id<Closing> id, Moment on,
                      Moment asOf)
{
    Records opened = records;
    Closing closing = *records.find(id);
    closing.events.push_back({std::nullopt, on, {}, {}, false});
    opened.closings.put(std::move(closing));
    const Answer before = readiness(records, profile, asOf);
    const Answer after = readiness(opened, profile, asOf);
    IfReopened effect;
    addSignatures(effect, records, before, after);
    for (std::size_t i = 0; i < before.closings.size(); ++i) {
        const ClosingAnswer &then = after.closings[i];
        if (then.state != before.closings[i].state)
            effect.changes.push_back({then.id, before.closings[i].state, then.state});
    }
    for (const RecordAndClosings &row : before.out_of_reach) {
        if (!isOutOfReach(after, row.record))
            effect.reachable.push_back(row.record);
    }
    return effect;
}

} // namespace lastrivet::readiness
