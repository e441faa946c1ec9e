// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/rules/Rules.h"

namespace lastrivet::readiness::rules {

namespace {

constexpr std::int64_t minutesPerDay = 24 * 60;

/// Wall-clock minutes since 1970; a day without time counts as its last minute.
std::int64_t lastMinute(Moment moment)
{
    const std::int64_t day = moment.day().time_since_epoch().count();
    return day * minutesPerDay + (moment.hasTime() ? moment.minuteOfDay() : minutesPerDay - 1);
}

} // namespace

void curingMaterial(const Judgement &judgement, Findings &findings)
{
    const std::int64_t now = lastMinute(judgement.at());
    judgement.forEachIn(judgement.ground().material_uses, [&](const OfStep<MaterialUse> &entry) {
        const MaterialUse &use = *entry.record;
        const std::int64_t cure = use.cure_minutes ? use.cure_minutes->count() : 0;
        if (cure > 0 && judgement.counts(use.used_on) && lastMinute(*use.used_on) + cure > now &&
            judgement.concerns(entry))
            findings.must(use);
    });
}

} // namespace lastrivet::readiness::rules
