// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/VoidingFacts.h"
#include "core/readiness/rules/Rules.h"

#include <algorithm>

namespace lastrivet::readiness::rules {

void outdatedSignOff(const Judgement &judgement, Findings &findings)
{
    for (const HoldPoint *point : judgement.here().hold_points) {
        if (!judgement.exists(*point) || judgement.isWaived(*point))
            continue;
        const SignOff *latest = judgement.latestSignOff(*point);
        if (!latest || !isAccepted(*latest))
            continue;
        auto facts = voidingFacts(judgement, *point, *latest);
        if (facts.empty())
            continue;
        const bool isHeavy =
            std::any_of(facts.begin(), facts.end(), [](const Fact &fact) { return fact.heavy; });
        findings.add(isHeavy && point->required ? Weight::Must : Weight::Should, *point,
                     point->signer_role, std::move(facts));
    }
}

} // namespace lastrivet::readiness::rules
