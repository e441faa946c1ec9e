// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/rules/Rules.h"

namespace lastrivet::readiness::rules {

void thinRecord(const Judgement &judgement, Findings &findings)
{
    if (judgement.photos().count > 0)
        return;
    bool isEmpty = true;
    judgement.forEachIn(judgement.ground().steps,
                        [&](const Step *step) { isEmpty = isEmpty && !judgement.exists(*step); });
    judgement.forEachIn(judgement.ground().sessions, [&](const Logged &entry) {
        isEmpty = isEmpty && !judgement.counts(entry.began);
    });
    if (isEmpty)
        findings.should(judgement.closing());
}

} // namespace lastrivet::readiness::rules
