// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/rules/Rules.h"

#include "core/records/LockedByHand.h"

namespace lastrivet::readiness::rules {

void unlockedFastener(const Judgement &judgement, Findings &findings)
{
    judgement.forEachIn(judgement.ground().fasteners, [&](const OfStep<Fastener> &entry) {
        const Fastener &fastener = *entry.record;
        if (isLockedByHand(fastener.locking) && judgement.counts(fastener.fitted_on) &&
            !judgement.counts(fastener.locked_on) && judgement.exists(fastener) &&
            judgement.concerns(entry))
            findings.must(fastener);
    });
}

} // namespace lastrivet::readiness::rules
