// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/rules/Rules.h"

#include <algorithm>

namespace lastrivet::readiness::rules {

namespace {

bool usesCuringLot(const MaterialUse &use, const Records &records)
{
    return std::any_of(use.lot_ids.begin(), use.lot_ids.end(), [&](Id<MaterialLot> id) {
        const MaterialLot *lot = records.findLive(id);
        return lot && lot->cures;
    });
}

} // namespace

void cureTimeUnknown(const Judgement &judgement, Findings &findings)
{
    const Ground &ground = judgement.ground();
    judgement.forEachIn(ground.material_uses, [&](const OfStep<MaterialUse> &entry) {
        const MaterialUse &use = *entry.record;
        if (judgement.counts(use.used_on) && !use.cure_minutes &&
            usesCuringLot(use, ground.records) && judgement.concerns(entry))
            findings.should(use);
    });
}

} // namespace lastrivet::readiness::rules
