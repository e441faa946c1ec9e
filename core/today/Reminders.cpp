// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/today/Reminders.h"

#include "core/base/Tongue.h"
#include "core/fasteners/FastenerState.h"
#include "core/project/acts/Inspecting.h"
#include "core/readiness/CalibrationAt.h"
#include "core/readiness/Names.h"
#include "core/readiness/Sentences.h"
#include "core/stores/Delivery.h"
#include "core/stores/Soon.h"

#include <algorithm>
#include <array>
#include <map>
#include <optional>

namespace lastrivet::today {

using namespace readiness;

namespace {

using Rows = std::vector<Attention>;

std::string titleOf(const Records &records, Id<Closing> id)
{
    const Closing *closing = records.find(id);
    return closing ? closing->title : std::string();
}

void addOutOfReach(Rows &rows, const Records &records, const Answer &answer)
{
    for (const auto &item : answer.out_of_reach) {
        rows.push_back(
            {AttentionKind::OutOfReach,
             item.record,
             {"Open behind “{1}”, which is closed: {0}",
              {nested(named(records, item.record)), titleOf(records, item.closings.front())}}});
    }
}

/// One row for each part: bolts left finger-tight come by the dozen.
void addFingerTight(Rows &rows, const Records &records, Moment asOf)
{
    std::map<Id<Component>, std::vector<const Fastener *>> byPart;
    for (const Fastener *fastener : fasteners::fingerTight(records, asOf))
        byPart[fastener->component_id].push_back(fastener);
    for (const auto &[part, loose] : byPart) {
        const Fastener &oldest = *loose.front();
        const RecordRef ref{RecordType::Fastener, oldest.id.value()};
        const auto name = nested(named(records, {RecordType::Component, part.value()}));
        if (loose.size() == 1)
            rows.push_back({AttentionKind::FingerTight,
                            ref,
                            {"Finger-tight since {0}: {1}, {2}",
                             {oldest.fitted_on->text(), oldest.place, name}}});
        else
            rows.push_back({AttentionKind::FingerTight,
                            ref,
                            {"Finger-tight in {0} places, the first since {1}: {2}",
                             {std::to_string(loose.size()), oldest.fitted_on->text(), name}}});
    }
}

void addClosedEarly(Rows &rows, const Records &records, const Answer &answer)
{
    for (const auto &closing : answer.closings) {
        if (closing.state != State::ClosedEarly)
            continue;
        const Closing *record = records.find(closing.id);
        if (!record)
            continue;
        const auto must = std::ranges::find(closing.blockers, Weight::Must, &Blocker::weight);
        const RecordRef ref{RecordType::Closing, closing.id.value()};
        if (record->made_by == MadeBy::EarlierBuilder)
            rows.push_back({AttentionKind::ClosedEarly,
                            ref,
                            {"{0} was closed before these records began; the inspector decides",
                             {record->title}}});
        else if (must == closing.blockers.end())
            rows.push_back({AttentionKind::ClosedEarly,
                            ref,
                            {"{0} was closed by the factory; its document is not on record",
                             {record->title}}});
        else
            rows.push_back({AttentionKind::ClosedEarly,
                            ref,
                            {"{0} was closed with gaps: {1}",
                             {record->title, nested(sentence(*must, records))}}});
    }
}

void addOutdated(Rows &rows, const Records &records, const Answer &answer)
{
    for (const auto &closing : answer.closings) {
        if (isClosed(closing.state))
            continue;
        for (const auto &blocker : closing.blockers) {
            if (blocker.rule == Rule::OutdatedSignOff)
                rows.push_back(
                    {AttentionKind::OutdatedSignature,
                     blocker.record,
                     {"{0}: {1}",
                      {titleOf(records, closing.id), nested(sentence(blocker, records))}}});
        }
    }
}

void addVisits(Rows &rows, const Records &records, Moment asOf)
{
    for (const Inspection *visit : acts::openRequests(records, asOf)) {
        const RecordRef ref{RecordType::Inspection, visit->id.value()};
        if (visit->planned_for)
            rows.push_back({AttentionKind::Visit,
                            ref,
                            {"A visit is planned for {0}", {visit->planned_for->text()}}});
        else
            rows.push_back(
                {AttentionKind::Visit,
                 ref,
                 {"A visit was asked for on {0}; no day is set yet", {visit->asked_on->text()}}});
    }
}

/// Days from `asOf` to `moment`, when that is worth a reminder.
std::optional<std::int64_t> daysTo(Moment moment, Moment asOf)
{
    const auto days = (moment.day() - asOf.day()).count();
    if (days > stores::soonDays || days < -stores::soonDays)
        return std::nullopt;
    return days;
}

void addExpiring(Rows &rows, const Records &records, Moment asOf)
{
    for (const MaterialLot &lot : records.material_lots) {
        const auto days =
            lot.expires_on && !lot.withdrawn_on ? daysTo(*lot.expires_on, asOf) : std::nullopt;
        if (!days)
            continue;
        const RecordRef ref{RecordType::MaterialLot, lot.id.value()};
        rows.push_back({AttentionKind::ExpiringMaterial,
                        ref,
                        {*days < 0 ? "{0}: expired on {1}" : "{0}: expires on {1}",
                         {nestedFirst(named(records, ref)), lot.expires_on->text()}}});
    }
}

void addCalibrations(Rows &rows, const Records &records, Moment asOf)
{
    for (const Tool &tool : records.tools) {
        if (tool.withdrawn_on || !tool.needs_calibration)
            continue;
        const RecordRef ref{RecordType::Tool, tool.id.value()};
        const auto *newest = newestCalibration(
            tool, [asOf](const std::optional<Moment> &moment) { return happened(moment, asOf); });
        if (!newest) {
            rows.push_back({AttentionKind::CalibrationDue,
                            ref,
                            {"{0}: no calibration on record", {tool.name}}});
            continue;
        }
        const auto due = newest->due_on;
        if (due && (due->day() - asOf.day()).count() <= stores::soonDays)
            rows.push_back({AttentionKind::CalibrationDue,
                            ref,
                            {after(asOf, *due) ? "{0}: calibration was due on {1}"
                                               : "{0}: calibration is due on {1}",
                             {tool.name, due->text()}}});
    }
}

void addLateParts(Rows &rows, const Records &records, Moment asOf)
{
    for (const PartLine &line : records.part_lines) {
        const stores::LineStanding standing = stores::standingOf(line, asOf);
        if (!line.withdrawn_on && line.expected_on && standing.isOverdue())
            rows.push_back({AttentionKind::LatePart,
                            {RecordType::PartLine, line.id.value()},
                            {"{0}: {1} of {2} missing, expected on {3}",
                             {line.name, std::to_string(standing.wanted),
                              std::to_string(line.quantity), line.expected_on->text()}}});
    }
}

constexpr std::string_view sentenceOfSeveral(Gap gap)
{
    switch (gap) {
    case Gap::ClosingStepNotDone:
        return "{0} steps are not done whose closings are closed; the first is {1}";
    case Gap::FactoryClosingWithoutDocument:
        return "{0} closings by the factory have no document on record; the first is {1}";
    case Gap::PartWithoutClosing:
        return "{0} parts have no closing recorded; the first is {1}";
    case Gap::RecordWithoutPlace:
        return "{0} open papers name no part; the first is {1}";
    }
    return {};
}

/// One row per kind of gap: there can be many in a young project, and none of them is urgent.
void addGaps(Rows &rows, const Records &records, const Answer &answer)
{
    for (std::size_t i = 0; i < Words<Gap>::list.size(); ++i) {
        const auto first = std::ranges::find(answer.to_complete, Gap(i), &ToComplete::what);
        if (first == answer.to_complete.end())
            continue;
        const auto count = std::ranges::count(answer.to_complete, Gap(i), &ToComplete::what);
        const Message several{sentenceOfSeveral(Gap(i)),
                              {std::to_string(count), nested(named(records, first->record))}};
        rows.push_back({AttentionKind::ToComplete, first->record,
                        count == 1 ? sentence(*first, records) : several});
    }
}

} // namespace

std::vector<Attention> reminders(const Records &records, const Answer &answer)
{
    Rows rows;
    addFingerTight(rows, records, answer.as_of);
    addOutOfReach(rows, records, answer);
    addClosedEarly(rows, records, answer);
    addOutdated(rows, records, answer);
    addVisits(rows, records, answer.as_of);
    addExpiring(rows, records, answer.as_of);
    addCalibrations(rows, records, answer.as_of);
    addLateParts(rows, records, answer.as_of);
    addGaps(rows, records, answer);
    return rows;
}

} // namespace lastrivet::today
