// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "core/readiness/Verdicts.h"

// The lists of an answer, each in the source file named after it. They are worked out from the
// verdicts; `answer` has its closings already.
namespace lastrivet::readiness {

/// Open things behind permanent closings that are closed, with the closings to reopen for them.
std::vector<RecordAndClosings> outOfReach(Verdicts &verdicts, const Answer &answer);
/// What closings that may be next would bury: advice, and what may follow but is not done.
std::vector<LastChance> lastChances(Verdicts &verdicts, const Answer &answer);
/// Steps that can be worked on now, the most useful first.
std::vector<Id<Step>> workableSteps(const Ground &ground, const Answer &answer);
/// Which closings one visit could cover, after how much more work.
std::vector<VisitPlanRow> visitPlan(const Ground &ground, const Answer &answer);
/// Records that keep closings open, signatures aside; those that keep the most closings open first.
std::vector<RecordAndClosings> unlocking(const Answer &answer);
/// What is missing from the records.
std::vector<ToComplete> gaps(const Verdicts &verdicts, const Answer &answer);
/// The worst state at or below each part.
std::vector<Badge> badges(const Ground &ground, const Answer &answer);

/// By record name, then id.
inline bool namedBefore(RecordRef a, RecordRef b)
{
    return a.type != b.type ? word(a.type) < word(b.type) : a.id < b.id;
}

} // namespace lastrivet::readiness
