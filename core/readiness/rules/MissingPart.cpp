// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/PartsCount.h"
#include "core/readiness/rules/Rules.h"

namespace lastrivet::readiness::rules {

void missingPart(const Judgement &judgement, Findings &findings)
{
    judgement.forEachIn(judgement.ground().part_lines, [&](const OfStep<PartLine> &entry) {
        const PartLine &line = *entry.record;
        if (isShort(line, judgement.counts(line.received_on)) && judgement.exists(line) &&
            judgement.concerns(entry))
            findings.must(line);
    });
}

} // namespace lastrivet::readiness::rules
