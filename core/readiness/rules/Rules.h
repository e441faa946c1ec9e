// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Findings.h"
#include "core/readiness/Judgement.h"

#include <cstddef>
#include <span>
#include <vector>

/// One function per rule, each in the file named after it: adds what the rule finds.
namespace lastrivet::readiness::rules {

void cureTimeUnknown(const Judgement &judgement, Findings &findings);
void curingMaterial(const Judgement &judgement, Findings &findings);
void expiredMaterial(const Judgement &judgement, Findings &findings);
void failedSample(const Judgement &judgement, Findings &findings);
void fastenerNotFitted(const Judgement &judgement, Findings &findings);
void filedAbove(const Judgement &judgement, Findings &findings);
void innerClosedEarly(const Judgement &judgement, Findings &findings);
void innerClosingOpen(const Judgement &judgement, Findings &findings);
void looseFastener(const Judgement &judgement, Findings &findings);
void measurementMissing(const Judgement &judgement, Findings &findings);
void measurementOutOfLimits(const Judgement &judgement, Findings &findings);
void missingPart(const Judgement &judgement, Findings &findings);
void openBulletin(const Judgement &judgement, Findings &findings);
void openSquawk(const Judgement &judgement, Findings &findings);
void outdatedSignOff(const Judgement &judgement, Findings &findings);
void rejectedDeviationBuilt(const Judgement &judgement, Findings &findings);
void signatureWithoutSheet(const Judgement &judgement, Findings &findings);
void stalePhotos(const Judgement &judgement, Findings &findings);
void thinRecord(const Judgement &judgement, Findings &findings);
void tooFewPhotos(const Judgement &judgement, Findings &findings);
void torqueOutOfLimits(const Judgement &judgement, Findings &findings);
void uncalibratedTool(const Judgement &judgement, Findings &findings);
void undecidedDeviation(const Judgement &judgement, Findings &findings);
void undoneStep(const Judgement &judgement, Findings &findings);
/// Of the undone steps only those in the reach, not those before a closing step.
void undoneStepInReach(const Judgement &judgement, Findings &findings);
void unlockedFastener(const Judgement &judgement, Findings &findings);
void unmarkedFastener(const Judgement &judgement, Findings &findings);
void unsignedHoldPoint(const Judgement &judgement, Findings &findings);
void untickedCheck(const Judgement &judgement, Findings &findings);

/// How a rule is used.
struct Entry {
    Rule rule;
    void (*find)(const Judgement &, Findings &);
    /// What it finds behind a closed closing is out of reach.
    bool buries = false;
    /// Records may be excused from it; those are listed as last chances.
    bool excuses = false;
    /// Used in place of `find` where only the reach is searched.
    void (*findInReach)(const Judgement &, Findings &) = nullptr;
};

/// All rules, in alphabetical order of their names.
std::span<const Entry> all();

/// What some of the rules, those with the property `chosen`, find in the reach of a closing at the
/// moment that is asked about. `closing` is a position in `Ground::closings`.
std::vector<Blocker> findInReach(Verdicts &verdicts, std::size_t closing, bool Entry::*chosen,
                                 Looking looking = Looking::AtWhatCounts);

} // namespace lastrivet::readiness::rules
