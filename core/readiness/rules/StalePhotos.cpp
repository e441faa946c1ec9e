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
    judgement.forEachIn(judgement.ground().sessions, [&](const OfStep<WorkSession> &entry) {
        const WorkSession &session = *entry.record;
        const bool isWork =
            session.kind != WorkKind::Inspection && session.kind != WorkKind::Planning;
        const Moment end = endOf(session);
        if (isWork && judgement.counts(end) && !judgement.isExcused(entry))
            latest = std::max(latest, std::optional(end.day()));
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
