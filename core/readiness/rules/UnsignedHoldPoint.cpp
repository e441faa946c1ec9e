// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/rules/Rules.h"

#include <algorithm>

namespace lastrivet::readiness::rules {

namespace {

/// A rejection whose findings nobody entered waits for them, not for the next signature.
bool isRejectedWithoutFindings(const SignOff *latest, const Ground &ground)
{
    return latest && (!latest->inspection_id || !ground.hasFindings(latest->inspection_id));
}

/// What is signed after the region was closed does not count for its closing.
bool isSignedLater(const HoldPoint &point, const Judgement &judgement)
{
    const auto signatures = judgement.ground().signOffs(point.id);
    return std::any_of(signatures.begin(), signatures.end(), [&](const SignOff *signature) {
        return isAccepted(*signature) && happened(signature->signed_on, judgement.asOf()) &&
               !judgement.counts(signature->signed_on);
    });
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
        Blocker &blocker =
            findings.add(point->required ? Weight::Must : Weight::Should, *point, waitsFor);
        blocker.is_rejected = latest != nullptr;
        blocker.is_signed_later = isSignedLater(*point, judgement);
    }
}

} // namespace lastrivet::readiness::rules
