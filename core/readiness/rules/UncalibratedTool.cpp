// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/CalibrationAt.h"
#include "core/readiness/rules/Rules.h"

namespace lastrivet::readiness::rules {

namespace {

bool isUncalibrated(const Judgement &judgement, Id<Tool> id, Moment use)
{
    const Tool *tool = judgement.ground().records.findLive(id);
    return tool && wasUncalibrated(*tool, use, [&](const std::optional<Moment> &moment) {
               return judgement.counts(moment);
           });
}

} // namespace

void uncalibratedTool(const Judgement &judgement, Findings &findings)
{
    const auto check = [&](const auto &entry, const std::optional<Moment> &use) {
        if (judgement.counts(use) && judgement.exists(*entry.record) && judgement.concerns(entry) &&
            isUncalibrated(judgement, entry.record->tool_id, *use))
            findings.should(*entry.record);
    };
    const Ground &ground = judgement.ground();
    judgement.forEachIn(ground.fasteners, [&](const OfStep<Fastener> &entry) {
        check(entry, entry.record->torqued_on);
    });
    judgement.forEachIn(ground.measurements, [&](const OfStep<Measurement> &entry) {
        check(entry, entry.record->measured_on);
    });
}

} // namespace lastrivet::readiness::rules
