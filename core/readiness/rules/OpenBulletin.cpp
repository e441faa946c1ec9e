// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/OpenState.h"
#include "core/readiness/rules/Rules.h"

namespace lastrivet::readiness::rules {

void openBulletin(const Judgement &judgement, Findings &findings)
{
    const auto counts = [&](const std::optional<Moment> &moment) {
        return judgement.counts(moment);
    };
    for (const Bulletin *bulletin : judgement.bulletins()) {
        if (!isOpen(*bulletin, counts))
            continue;
        if (bulletin->mandatory || !bulletin->applies)
            findings.must(*bulletin);
        else
            findings.should(*bulletin);
    }
}

} // namespace lastrivet::readiness::rules
