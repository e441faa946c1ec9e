// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/RuleBench.h"

#include <algorithm>

namespace lastrivet::test {

RuleBench::RuleBench(readiness::Rule asked)
    : rule(asked)
{
    wing = part("Wing");
    panel = part("Panel", wing);
    rib = part("Rib", panel);
    fuselage = part("Fuselage");
    box = closing(wing, {panel});
}

std::optional<readiness::Blocker> RuleBench::about(RecordRef record, std::string_view asOf) const
{
    const auto answer = askBox(asOf);
    const auto found = std::find_if(answer.blockers.begin(), answer.blockers.end(),
                                    [&](const readiness::Blocker &blocker) {
                                        return blocker.rule == rule && blocker.record == record;
                                    });
    return found == answer.blockers.end() ? std::nullopt : std::optional(*found);
}

readiness::Answer RuleBench::ask(std::string_view asOf) const
{
    return readiness::readiness(records, profile, on(asOf));
}

readiness::ClosingAnswer RuleBench::askBox(std::string_view asOf) const
{
    return *ask(asOf).closing(box);
}

Id<HoldPoint> RuleBench::signedPoint(HoldPointKind kind, SignerRole signer,
                                     std::string_view signedOn)
{
    const auto point = holdPoint(box, kind, signer);
    signOff(point, builder, signedOn);
    return point;
}

Id<Step> RuleBench::followingStep()
{
    Step following;
    following.component_id = rib;
    following.title = "Leak test";
    following.may_follow = {box};
    return add(following);
}

} // namespace lastrivet::test
