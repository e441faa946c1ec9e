// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/rules/Rules.h"

namespace lastrivet::readiness::rules {

void unmarkedFastener(const Judgement &judgement, Findings &findings)
{
    judgement.forEachIn(judgement.ground().fasteners, [&](const OfStep<Fastener> &entry) {
        const Fastener &fastener = *entry.record;
        if (judgement.counts(fastener.torqued_on) && !judgement.counts(fastener.marked_on) &&
            judgement.exists(fastener) && judgement.concerns(entry))
            findings.should(fastener);
    });
}

} // namespace lastrivet::readiness::rules
