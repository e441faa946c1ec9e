// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/rules/Rules.h"

namespace lastrivet::readiness::rules {

namespace {

/// Somebody has to come back and lock it.
bool isLockedByHand(Locking locking)
{
    return locking == Locking::SplitPin || locking == Locking::SafetyWire ||
           locking == Locking::JamNut || locking == Locking::LockTab;
}

} // namespace

void unlockedFastener(const Judgement &judgement, Findings &findings)
{
    judgement.forEachIn(judgement.ground().fasteners, [&](const OfStep<Fastener> &entry) {
        const Fastener &fastener = *entry.record;
        if (isLockedByHand(fastener.locking) && judgement.counts(fastener.fitted_on) &&
            !judgement.counts(fastener.locked_on) && judgement.exists(fastener) &&
            judgement.concerns(entry))
            findings.must(fastener);
    });
}

} // namespace lastrivet::readiness::rules
