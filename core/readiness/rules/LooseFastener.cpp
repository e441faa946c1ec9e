// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/rules/Rules.h"

namespace lastrivet::readiness::rules {

void looseFastener(const Judgement &judgement, Findings &findings)
{
    judgement.forEachIn(judgement.ground().fasteners, [&](const OfStep<Fastener> &entry) {
        const Fastener &fastener = *entry.record;
        const bool hasLimit = fastener.torque_min || fastener.torque_max;
        if (hasLimit && judgement.counts(fastener.fitted_on) &&
            !judgement.counts(fastener.torqued_on) && judgement.exists(fastener) &&
            judgement.concerns(entry))
            findings.must(fastener);
    });
}

} // namespace lastrivet::readiness::rules
