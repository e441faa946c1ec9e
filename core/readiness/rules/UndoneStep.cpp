// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/rules/Rules.h"

#include <unordered_set>

namespace lastrivet::readiness::rules {

namespace {

/// Not done, not dropped, and neither the closing itself nor the closing of a box inside.
bool isLeft(const Judgement &judgement, const Step &step)
{
    return !judgement.counts(step.done_on) && !judgement.counts(step.dropped_on) &&
           judgement.exists(step) && judgement.concerns(step) &&
           step.closes != judgement.closing().id && !judgement.closesInner(step);
}

/// Every step before a closing step that is there and not dropped; withdrawn ones and those not yet
/// planned are passed through.
std::unordered_set<std::int64_t> stepsBeforeClosing(const Judgement &judgement)
{
    const Records &records = judgement.ground().records;
    std::vector<Id<Step>> waiting;
    for (const Step *step : judgement.here().closing_steps) {
        if (judgement.exists(*step) && !judgement.counts(step->dropped_on))
            waiting.insert(waiting.end(), step->after.begin(), step->after.end());
    }
    std::unordered_set<std::int64_t> before;
    while (!waiting.empty()) {
        const Id<Step> id = waiting.back();
        waiting.pop_back();
        const Step *step = records.find(id);
        if (step && before.insert(id.value()).second)
            waiting.insert(waiting.end(), step->after.begin(), step->after.end());
    }
    return before;
}

} // namespace

void undoneStepInReach(const Judgement &judgement, Findings &findings)
{
    judgement.forEachIn(judgement.ground().steps, [&](const Step *step) {
        if (isLeft(judgement, *step))
            findings.must(*step);
    });
}

void undoneStep(const Judgement &judgement, Findings &findings)
{
    undoneStepInReach(judgement, findings);
    for (const std::int64_t id : stepsBeforeClosing(judgement)) {
        const Step *step = judgement.ground().records.findLive(Id<Step>{id});
        if (step && !judgement.reaches(step->component_id) && isLeft(judgement, *step))
            findings.must(*step);
    }
}

} // namespace lastrivet::readiness::rules
