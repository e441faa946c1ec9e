// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/profiles/HoldPoints.h"

#include "core/records/invariants/Ancestors.h"

#include <algorithm>

namespace lastrivet {

namespace {

WordSet<ComponentKind> kindsInReach(const Closing &closing, const Records &records)
{
    WordSet<ComponentKind> kinds;
    invariants::Reach reach{records, closing};
    for (const Component &part : records.components) {
        if (!part.withdrawn_on && !kinds.contains(part.kind) && reach.holds(part.id))
            kinds.insert(part.kind);
    }
    return kinds;
}

bool isThere(const Records &records, const Closing &closing, const Profile::HoldPointRule &rule)
{
    return std::any_of(records.hold_points.begin(), records.hold_points.end(),
                       [&](const HoldPoint &point) {
                           return !point.withdrawn_on && point.closing_id == closing.id &&
                                  point.kind == rule.kind && point.signer_role == rule.signer_role;
                       });
}

} // namespace

std::vector<HoldPoint> holdPointsFor(const Closing &closing, const Records &records,
                                     const Profile &profile)
{
    const auto kinds = kindsInReach(closing, records);
    std::vector<HoldPoint> points;
    for (const auto &rule : profile.hold_points) {
        if (closing.withdrawn_on || !rule.appliesTo(closing, kinds) ||
            isThere(records, closing, rule))
            continue;
        HoldPoint point;
        point.closing_id = closing.id;
        point.kind = rule.kind;
        point.signer_role = rule.signer_role;
        point.required = rule.required;
        point.source = profile.citation(rule.source, rule.mark);
        points.push_back(std::move(point));
    }
    return points;
}

} // namespace lastrivet
