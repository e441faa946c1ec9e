// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/OpenState.h"
#include "core/readiness/rules/Rules.h"

#include <algorithm>

namespace lastrivet::readiness::rules {

namespace {

/// Squawks whose repair needs access to something in the reach, each once.
std::vector<const Squawk *> needingAccess(const Judgement &judgement)
{
    std::vector<const Squawk *> found;
    for (const Squawk *squawk : judgement.squawks()) {
        if (squawk->needs_access_to.empty())
            found.push_back(squawk);
    }
    // Access to a part means access to all below it: parts above the reach meet it too.
    const auto &access = judgement.ground().access;
    judgement.forEachIn(access, [&](const Squawk *squawk) { found.push_back(squawk); });
    for (const Place above : judgement.placesAbove()) {
        for (const Squawk *squawk : access.at(above))
            found.push_back(squawk);
    }
    std::sort(found.begin(), found.end());
    found.erase(std::unique(found.begin(), found.end()), found.end());
    return found;
}

} // namespace

void openSquawk(const Judgement &judgement, Findings &findings)
{
    const auto counts = [&](const std::optional<Moment> &moment) {
        return judgement.counts(moment);
    };
    for (const Squawk *squawk : needingAccess(judgement)) {
        if (!isOpen(*squawk, counts))
            continue;
        std::optional<SignerRole> waitsFor;
        if (judgement.counts(squawk->fixed_on))
            waitsFor = squawk->verify_by.value_or(SignerRole::Builder);
        const bool isCosmetic = squawk->severity == Severity::Cosmetic;
        findings.add(isCosmetic ? Weight::Should : Weight::Must, *squawk, waitsFor);
    }
}

} // namespace lastrivet::readiness::rules
