// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Verdicts.h"
#include "core/readiness/rules/Rules.h"

#include <algorithm>

namespace lastrivet::readiness::rules {

namespace {

/// Whose word alone the open box waits for.
std::optional<SignerRole> waitsFor(const std::vector<Blocker> &blockers, State state)
{
    if (state == State::Clear || state == State::ReadyToSign)
        return SignerRole::Builder;
    if (state != State::ReadyToInspect)
        return std::nullopt;
    const bool waitsForInspector =
        std::any_of(blockers.begin(), blockers.end(), [](const Blocker &blocker) {
            return blocker.weight == Weight::Must && blocker.waits_for == SignerRole::Inspector;
        });
    return waitsForInspector ? SignerRole::Inspector : SignerRole::Adviser;
}

} // namespace

void innerClosingOpen(const Judgement &judgement, Findings &findings)
{
    Verdicts &verdicts = judgement.verdicts();
    for (const std::size_t inner : judgement.here().inner) {
        if (verdicts.closingMoment(inner, judgement.at()))
            continue;
        const auto &blockers = verdicts.blockers(inner, judgement.at());
        findings.must(*judgement.ground().closings[inner].closing,
                      waitsFor(blockers, openState(blockers)));
    }
}

} // namespace lastrivet::readiness::rules
