// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/rules/Rules.h"

namespace lastrivet::readiness::rules {

void failedSample(const Judgement &judgement, Findings &findings)
{
    judgement.forEachIn(judgement.ground().material_uses, [&](const OfStep<MaterialUse> &entry) {
        const MaterialUse &use = *entry.record;
        if (judgement.counts(use.used_on) && use.sample == Sample::Failed &&
            judgement.counts(use.sample_on) && !judgement.counts(use.accepted_on) &&
            judgement.concerns(entry))
            findings.must(use);
    });
}

} // namespace lastrivet::readiness::rules
