// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/rules/Rules.h"

namespace lastrivet::readiness::rules {

void signatureWithoutSheet(const Judgement &judgement, Findings &findings)
{
    for (const HoldPoint *point : judgement.here().hold_points) {
        if (point->signer_role == SignerRole::Builder || !judgement.exists(*point) ||
            judgement.isWaived(*point))
            continue;
        const SignOff *latest = judgement.latestSignOff(*point);
        if (latest && isAccepted(*latest) && !latest->scan_id)
            findings.should(*point);
    }
}

} // namespace lastrivet::readiness::rules
