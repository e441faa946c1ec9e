// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/rules/Rules.h"

#include <algorithm>

namespace lastrivet::readiness::rules {

namespace {

using Day = std::chrono::sys_days;

std::optional<Day> latestWorkDay(const Judgement &judgement)
{
    std::optional<Day> latest;
    judgement.forEachIn(judgement.ground().sessions, [&](const Logged &entry) {
        if (!judgement.counts(entry.ended) || entry.ended->day() <= latest)
            return;
        const WorkKind kind = entry.record->kind;
        const bool isWork = kind != WorkKind::Inspection && kind != WorkKind::Planning;
        if (isWork && !judgement.isExcused(*entry.record))
            latest = entry.ended->day();
    });
    return latest;
}

} // namespace

void stalePhotos(const Judgement &judgement, Findings &findings)
{
    const auto photo = judgement.photos().latest;
    const auto work = photo ? latestWorkDay(judgement) : std::nullopt;
    if (work && *photo < *work)
        findings.should(judgement.closing());
}

} // namespace lastrivet::readiness::rules
