// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/rules/Rules.h"

#include "core/readiness/Verdicts.h"

namespace lastrivet::readiness::rules {

std::span<const Entry> all()
{
    constexpr bool buries = true;
    constexpr bool excuses = true;
    static constexpr Entry entries[] = {
        {Rule::CureTimeUnknown, cureTimeUnknown, false, excuses},
        {Rule::CuringMaterial, curingMaterial, false, excuses},
        {Rule::ExpiredMaterial, expiredMaterial, false, excuses},
        {Rule::FailedSample, failedSample, buries, excuses},
        {Rule::FastenerNotFitted, fastenerNotFitted, buries, excuses},
        {Rule::FiledAbove, filedAbove},
        {Rule::InnerClosedEarly, innerClosedEarly},
        {Rule::InnerClosingOpen, innerClosingOpen},
        {Rule::LooseFastener, looseFastener, buries, excuses},
        {Rule::MeasurementMissing, measurementMissing, false, excuses},
        {Rule::MeasurementOutOfLimits, measurementOutOfLimits, buries, excuses},
        {Rule::MissingPart, missingPart, false, excuses},
        {Rule::OpenBulletin, openBulletin, buries},
        {Rule::OpenSquawk, openSquawk, buries},
        {Rule::OutdatedSignOff, outdatedSignOff},
        {Rule::RejectedDeviationBuilt, rejectedDeviationBuilt, buries},
        {Rule::SignatureWithoutSheet, signatureWithoutSheet},
        {Rule::StalePhotos, stalePhotos},
        {Rule::ThinRecord, thinRecord},
        {Rule::TooFewPhotos, tooFewPhotos},
        {Rule::TorqueOutOfLimits, torqueOutOfLimits, buries, excuses},
        {Rule::UncalibratedTool, uncalibratedTool, false, excuses},
        {Rule::UndecidedDeviation, undecidedDeviation, buries},
        {Rule::UndoneStep, undoneStep, buries, excuses, undoneStepInReach},
        {Rule::UnlockedFastener, unlockedFastener, buries, excuses},
        {Rule::UnmarkedFastener, unmarkedFastener, false, excuses},
        {Rule::UnsignedHoldPoint, unsignedHoldPoint},
        {Rule::UntickedCheck, untickedCheck, false, excuses},
    };
    return entries;
}

std::vector<Blocker> findInReach(Verdicts &verdicts, std::size_t closing, bool Entry::*chosen,
                                 Looking looking)
{
    std::vector<Blocker> found;
    Findings findings(found);
    const Judgement judgement(verdicts.ground(), verdicts.profile(), verdicts, closing,
                              verdicts.asOf(), verdicts.asOf(), looking);
    for (const Entry &rule : all()) {
        if (!(rule.*chosen))
            continue;
        findings.beginRule(rule.rule);
        (rule.findInReach ? rule.findInReach : rule.find)(judgement, findings);
    }
    return found;
}

} // namespace lastrivet::readiness::rules
