// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/rules/Rules.h"

#include <algorithm>

namespace lastrivet::readiness::rules {

namespace {

bool wasExpired(const MaterialUse &use, const Records &records)
{
    return std::any_of(use.lot_ids.begin(), use.lot_ids.end(), [&](Id<MaterialLot> id) {
        const MaterialLot *lot = records.findLive(id);
        return lot && lot->expires_on && after(*use.used_on, *lot->expires_on);
    });
}

} // namespace

void expiredMaterial(const Judgement &judgement, Findings &findings)
{
    const Ground &ground = judgement.ground();
    judgement.forEachIn(ground.material_uses, [&](const OfStep<MaterialUse> &entry) {
        const MaterialUse &use = *entry.record;
        if (judgement.counts(use.used_on) && wasExpired(use, ground.records) &&
            !judgement.counts(use.accepted_on) && judgement.concerns(entry))
            findings.must(use);
    });
}

} // namespace lastrivet::readiness::rules
