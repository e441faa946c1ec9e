// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/CountOnRecord.h"
#include "core/readiness/rules/Rules.h"

namespace lastrivet::readiness::rules {

void thinRecord(const Judgement &judgement, Findings &findings)
{
    const OnRecord counted = countOnRecord(judgement);
    if (counted.steps == 0 && counted.sessions == 0 && counted.photos == 0)
        findings.should(judgement.closing());
}

} // namespace lastrivet::readiness::rules
