// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/CountOnRecord.h"

#include <algorithm>

namespace lastrivet::readiness {

namespace {

template <class Record>
std::int64_t existing(const Judgement &judgement, const ByPlace<OfStep<Record>> &filed)
{
    std::int64_t count = 0;
    judgement.forEachIn(
        filed, [&](const OfStep<Record> &entry) { count += judgement.exists(*entry.record); });
    return count;
}

template <class Records, class Counted>
std::int64_t countIf(const Records &records, Counted counted)
{
    return std::count_if(records.begin(), records.end(), counted);
}

bool isBuiltOtherwise(const Judgement &judgement)
{
    return countIf(judgement.deviations(), [&](const Deviation *deviation) {
               return judgement.counts(deviation->built_on);
           }) > 0;
}

/// A hold point was signed, with whatever result, or waived.
bool isSpokenFor(const Judgement &judgement)
{
    return countIf(judgement.here().hold_points, [&](const HoldPoint *point) {
               return judgement.isWaived(*point) || judgement.latestSignOff(*point);
           }) > 0;
}

} // namespace

OnRecord countOnRecord(const Judgement &judgement)
{
    const Ground &ground = judgement.ground();
    OnRecord counted;
    judgement.forEachIn(ground.steps,
                        [&](const Step *step) { counted.steps += judgement.exists(*step); });
    judgement.forEachIn(ground.sessions, [&](const Logged &entry) {
        counted.sessions += judgement.counts(entry.began);
    });
    judgement.forEachIn(ground.material_uses, [&](const OfStep<MaterialUse> &entry) {
        counted.material_uses += judgement.counts(entry.record->used_on);
    });
    counted.photos = judgement.photos().count;
    judgement.forEachSquawk(
        [&](const Squawk &squawk) { counted.squawks += judgement.counts(squawk.found_on); });
    counted.deviations = countIf(judgement.deviations(), [&](const Deviation *deviation) {
        return judgement.counts(deviation->raised_on);
    });
    counted.bulletins = countIf(judgement.bulletins(), [&](const Bulletin *bulletin) {
        return judgement.counts(bulletin->received_on);
    });
    counted.fasteners = existing(judgement, ground.fasteners);
    counted.measurements = existing(judgement, ground.measurements);
    counted.part_lines = existing(judgement, ground.part_lines);
    const auto &checks = judgement.here().checks;
    counted.checks = countIf(checks, [&](const Check *check) { return judgement.exists(*check); });
    counted.checks_done =
        countIf(checks, [&](const Check *check) { return judgement.counts(check->done_on); });
    return counted;
}

bool isBegun(const Judgement &judgement, const OnRecord &counted)
{
    if (counted.sessions > 0 || counted.photos > 0 || counted.material_uses > 0 ||
        counted.squawks > 0)
        return true;
    const Ground &ground = judgement.ground();
    bool begun = false;
    judgement.forEachIn(
        ground.steps, [&](const Step *step) { begun = begun || judgement.counts(step->done_on); });
    judgement.forEachIn(ground.fasteners, [&](const OfStep<Fastener> &entry) {
        begun = begun || judgement.counts(entry.record->fitted_on) ||
                judgement.counts(entry.record->torqued_on);
    });
    judgement.forEachIn(ground.measurements, [&](const OfStep<Measurement> &entry) {
        begun = begun || judgement.counts(entry.record->measured_on);
    });
    // One that is filed elsewhere and has to be reached from here.
    judgement.forEachIn(ground.access, [&](const Squawk *squawk) {
        begun = begun || judgement.counts(squawk->found_on);
    });
    return begun || isBuiltOtherwise(judgement) || isSpokenFor(judgement);
}

} // namespace lastrivet::readiness
