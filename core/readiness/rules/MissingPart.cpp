// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/PartsCount.h"
#include "core/readiness/rules/Rules.h"

namespace lastrivet::readiness::rules {

void missingPart(const Judgement &judgement, Findings &findings)
{
    judgement.forEachIn(judgement.ground().part_lines, [&](const OfStep<PartLine> &entry) {
        const PartLine &line = *entry.record;
        const bool isReceived = judgement.counts(line.received_on);
        if (isShort(line, isReceived) && judgement.exists(line) && judgement.concerns(entry))
            findings.add(Weight::Must, line, std::nullopt).is_received = isReceived;
    });
}

} // namespace lastrivet::readiness::rules
