// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/rules/Rules.h"

namespace lastrivet::readiness::rules {

namespace {

/// A rejection whose findings nobody entered waits for them, not for the next signature.
bool isRejectedWithoutFindings(const SignOff *latest, const Ground &ground)
{
    return latest && (!latest->inspection_id || !ground.hasFindings(latest->inspection_id));
}

} // namespace

void unsignedHoldPoint(const Judgement &judgement, Findings &findings)
{
    for (const HoldPoint *point : judgement.here().hold_points) {
        if (!judgement.exists(*point) || judgement.isWaived(*point))
            continue;
        const SignOff *latest = judgement.latestSignOff(*point);
        if (latest && isAccepted(*latest))
            continue;
        std::optional<SignerRole> waitsFor = point->signer_role;
        if (isRejectedWithoutFindings(latest, judgement.ground()))
            waitsFor.reset();
        findings.add(point->required ? Weight::Must : Weight::Should, *point, waitsFor)
            .is_rejected = latest != nullptr;
    }
}

} // namespace lastrivet::readiness::rules
