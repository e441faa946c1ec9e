// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/OpenState.h"
#include "core/readiness/rules/Rules.h"

namespace lastrivet::readiness::rules {

void rejectedDeviationBuilt(const Judgement &judgement, Findings &findings)
{
    const auto counts = [&](const std::optional<Moment> &moment) {
        return judgement.counts(moment);
    };
    for (const Deviation *deviation : judgement.deviations()) {
        if (isBuiltThoughRejected(*deviation, counts))
            findings.must(*deviation);
    }
}

} // namespace lastrivet::readiness::rules
