// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Limits.h"
#include "core/readiness/rules/Rules.h"

namespace lastrivet::readiness::rules {

void torqueOutOfLimits(const Judgement &judgement, Findings &findings)
{
    judgement.forEachIn(judgement.ground().fasteners, [&](const OfStep<Fastener> &entry) {
        const Fastener &fastener = *entry.record;
        if (!isTorqueOutside(fastener) || !judgement.counts(fastener.torqued_on) ||
            judgement.counts(fastener.accepted_on))
            return;
        if (judgement.exists(fastener) && judgement.concerns(entry))
            findings.must(fastener);
    });
}

} // namespace lastrivet::readiness::rules
