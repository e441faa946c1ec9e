// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/OpenState.h"
#include "core/readiness/rules/Rules.h"

#include <algorithm>

namespace lastrivet::readiness::rules {

namespace {

bool isRuledOut(const IdSet<Closing> &notInside, const Judgement &judgement)
{
    return std::binary_search(notInside.begin(), notInside.end(), judgement.closing().id);
}

template <class Paper>
void addPapers(const Judgement &judgement, const ByPlace<const Paper *> &filed, Place place,
               std::vector<const Paper *> &found)
{
    for (const Paper *paper : filed.at(place)) {
        const auto &parts = paper->component_ids;
        const bool isInside = std::any_of(parts.begin(), parts.end(), [&](Id<Component> part) {
            return judgement.reaches(part);
        });
        if (!isInside)
            found.push_back(paper);
    }
}

template <class Record>
void report(const Judgement &judgement, Findings &findings, std::vector<const Record *> &found)
{
    const auto counts = [&](const std::optional<Moment> &moment) {
        return judgement.counts(moment);
    };
    std::sort(found.begin(), found.end());
    found.erase(std::unique(found.begin(), found.end()), found.end());
    for (const Record *record : found) {
        if (isOpen(*record, counts) && !isRuledOut(record->not_inside, judgement))
            findings.should(*record);
    }
}

} // namespace

void filedAbove(const Judgement &judgement, Findings &findings)
{
    const Ground &ground = judgement.ground();
    std::vector<const Squawk *> squawks;
    std::vector<const Deviation *> deviations;
    std::vector<const Bulletin *> bulletins;
    for (const Place place : judgement.here().above) {
        // A part may be above one enclosed part and inside the reach by another.
        if (!holds(judgement.here().reach, place)) {
            for (const Squawk *squawk : ground.squawks.at(place)) {
                if (squawk->severity != Severity::Cosmetic && squawk->needs_access_to.empty())
                    squawks.push_back(squawk);
            }
        }
        addPapers(judgement, ground.deviations, place, deviations);
        addPapers(judgement, ground.bulletins, place, bulletins);
    }
    report(judgement, findings, squawks);
    report(judgement, findings, deviations);
    report(judgement, findings, bulletins);
}

} // namespace lastrivet::readiness::rules
