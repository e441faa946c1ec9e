// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/OpenState.h"
#include "core/readiness/rules/Rules.h"

#include <algorithm>

namespace lastrivet::readiness::rules {

namespace {

/// Open squawks whose repair needs access to something in the reach, each once.
std::vector<const Squawk *> openHere(const Judgement &judgement)
{
    std::vector<const Squawk *> found;
    const auto counts = [&](const std::optional<Moment> &moment) {
        return judgement.counts(moment);
    };
    const auto take = [&](const Squawk *squawk) {
        if (isOpen(*squawk, counts))
            found.push_back(squawk);
    };
    judgement.forEachSquawk([&](const Squawk &squawk) {
        if (squawk.needs_access_to.empty())
            take(&squawk);
    });
    // Access to a part means access to all below it: parts above the reach meet it too.
    const auto &access = judgement.ground().access;
    judgement.forEachIn(access, take);
    for (const Place above : judgement.here().above)
        std::ranges::for_each(access.at(above), take);
    std::sort(found.begin(), found.end());
    found.erase(std::unique(found.begin(), found.end()), found.end());
    return found;
}

} // namespace

void openSquawk(const Judgement &judgement, Findings &findings)
{
    for (const Squawk *squawk : openHere(judgement)) {
        std::optional<SignerRole> waitsFor;
        if (judgement.counts(squawk->fixed_on))
            waitsFor = squawk->verify_by.value_or(SignerRole::Builder);
        const bool isCosmetic = squawk->severity == Severity::Cosmetic;
        findings.add(isCosmetic ? Weight::Should : Weight::Must, *squawk, waitsFor);
    }
}

} // namespace lastrivet::readiness::rules
