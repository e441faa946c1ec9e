// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/FrontPages.h"

#include "core/packet/Chosen.h"
#include "core/packet/InWords.h"
#include "core/readiness/Limits.h"
#include "core/readiness/Sentences.h"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace lastrivet::packet {

namespace {

using readiness::Blocker;
using readiness::ClosingAnswer;
using readiness::Rule;
using readiness::State;
using readiness::Weight;

/// What is grave is told before the rest.
constexpr auto isFirst = [](const auto &row) { return row.is_grave; };

FrontPages::ToClose toCloseOf(const Records &records, const Region::Chosen &chosen)
{
    const Closing &record = *chosen.closing;
    const ClosingAnswer &closing = *chosen.answer;
    const auto count = [&](Weight weight) {
        return std::count_if(closing.blockers.begin(), closing.blockers.end(),
                             [&](const Blocker &blocker) { return blocker.weight == weight; });
    };
    return {closing.id,           record.title,  partPath(records, record.component_id),
            closing.state,        closing.begun, count(Weight::Must),
            count(Weight::Should)};
}

bool isForThese(const Region &region, const Inspection &inspection)
{
    return std::any_of(inspection.hold_point_ids.begin(), inspection.hold_point_ids.end(),
                       [&](Id<HoldPoint> id) {
                           return region.holds(RecordRef{RecordType::HoldPoint, id.value()});
                       });
}

std::vector<FrontPages::Visit> visits(const Region &region, const Profile &profile)
{
    const auto takes = [&](const Inspection &inspection) {
        const bool isKnown =
            region.ifHappened(inspection.asked_on) || region.ifHappened(inspection.held_on);
        if (!isKnown || region.ifHappened(inspection.cancelled_on))
            return false;
        const bool isOpen = !region.ifHappened(inspection.completed_on);
        return isForThese(region, inspection) || (profile.one_open_request && isOpen);
    };
    std::vector<FrontPages::Visit> all;
    for (const Inspection *inspection : chosenFrom(
             region.records().inspections, takes, [](const Inspection &) { return 0; },
             [](const Inspection &record) {
                 return record.asked_on ? record.asked_on : record.held_on;
             })) {
        all.push_back(visitOf(region.records(), *inspection, region.asOf()));
        all.back().is_for_these = isForThese(region, *inspection);
    }
    return all;
}

/// What no inspector passes over: airworthiness squawks, deviations that were rejected and built,
/// and what maker or authority demand.
bool isGrave(const Records &records, RecordRef record)
{
    if (record.type == RecordType::Squawk) {
        const Squawk *squawk = records.findLive(Id<Squawk>{record.id});
        return squawk && squawk->severity == Severity::Airworthiness;
    }
    if (record.type == RecordType::Deviation) {
        const Deviation *deviation = records.findLive(Id<Deviation>{record.id});
        return deviation && deviation->decision == Decision::Rejected && deviation->built_on;
    }
    const Bulletin *bulletin =
        record.type == RecordType::Bulletin ? records.findLive(Id<Bulletin>{record.id}) : nullptr;
    return bulletin && bulletin->mandatory;
}

bool waitsForVisitor(const Blocker &blocker)
{
    return blocker.waits_for && *blocker.waits_for != SignerRole::Builder;
}

/// What stands in the way of a box and of those around it is asked once.
void addRequest(FrontPages &front, const Records &records, const Blocker &blocker,
                const std::string &title)
{
    FrontPages::Request request{*blocker.waits_for,
                                readiness::sentence(blocker, records),
                                {title},
                                blocker.record,
                                isGrave(records, blocker.record)};
    const auto known = std::ranges::find_if(front.asked, [&](const FrontPages::Request &other) {
        return other.record == request.record && other.of == request.of &&
               other.what == request.what;
    });
    if (known == front.asked.end())
        front.asked.push_back(std::move(request));
    else
        known->about.push_back(title);
}

void addBlockers(FrontPages &front, const Records &records, const Region::Chosen &chosen)
{
    const ClosingAnswer &closing = *chosen.answer;
    if (isClosed(closing.state))
        return;
    const std::string &title = chosen.closing->title;
    const auto before = front.open.size();
    for (const Blocker &blocker : closing.blockers) {
        if (waitsForVisitor(blocker))
            addRequest(front, records, blocker, title);
        else if (blocker.weight == Weight::Must)
            front.open.push_back({closing.id, title, readiness::sentence(blocker, records),
                                  blocker.waits_for, blocker.record.type,
                                  isGrave(records, blocker.record)});
    }
    std::stable_partition(front.open.begin() + std::ptrdiff_t(before), front.open.end(), isFirst);
}

/// The first of what is still to be done to it.
Rule ruleOf(const Region &region, const Fastener &fastener)
{
    if (!region.ifHappened(fastener.fitted_on))
        return Rule::FastenerNotFitted;
    const bool hasLimit = fastener.torque_min || fastener.torque_max;
    if (hasLimit && !region.ifHappened(fastener.torqued_on))
        return Rule::LooseFastener;
    if (readiness::isTorqueOutside(fastener) && !region.ifHappened(fastener.accepted_on))
        return Rule::TorqueOutOfLimits;
    return Rule::UnlockedFastener;
}

/// The rule that finds the record open where it is out of reach.
Rule ruleOf(const Region &region, RecordRef record)
{
    const Records &records = region.records();
    switch (record.type) {
    case RecordType::Squawk:
        return Rule::OpenSquawk;
    case RecordType::Deviation: {
        const Deviation *deviation = records.find(Id<Deviation>{record.id});
        const bool isDecided = deviation && region.ifHappened(deviation->decided_on);
        return isDecided ? Rule::RejectedDeviationBuilt : Rule::UndecidedDeviation;
    }
    case RecordType::Fastener: {
        const Fastener *fastener = records.find(Id<Fastener>{record.id});
        return fastener ? ruleOf(region, *fastener) : Rule::FastenerNotFitted;
    }
    case RecordType::Bulletin:
        return Rule::OpenBulletin;
    case RecordType::Measurement:
        return Rule::MeasurementOutOfLimits;
    case RecordType::MaterialUse:
        return Rule::FailedSample;
    default:
        return Rule::UndoneStep;
    }
}

/// In the words of the rule, as on every other page.
Message openIn(const Region &region, RecordRef record)
{
    Blocker blocker{ruleOf(region, record), Weight::Must, record, {}, {}};
    const Squawk *squawk =
        record.type == RecordType::Squawk ? region.records().find(Id<Squawk>{record.id}) : nullptr;
    if (squawk && region.ifHappened(squawk->fixed_on))
        blocker.waits_for = squawk->verify_by.value_or(SignerRole::Builder);
    return readiness::sentence(blocker, region.records());
}

/// Of a closing that is closed the blockers are those of its day; this is what is open today.
std::vector<FrontPages::OutOfReach> outOfReach(const Region &region,
                                               const readiness::Answer &answer)
{
    std::vector<FrontPages::OutOfReach> all;
    for (const readiness::RecordAndClosings &row : answer.out_of_reach) {
        std::string closings;
        for (const Region::Chosen &chosen : region.chosen()) {
            if (std::ranges::find(row.closings, chosen.closing->id) != row.closings.end())
                closings += (closings.empty() ? "" : ", ") + chosen.closing->title;
        }
        if (!closings.empty())
            all.push_back(
                {closings, openIn(region, row.record), isGrave(region.records(), row.record)});
    }
    std::stable_partition(all.begin(), all.end(), isFirst);
    return all;
}

void addWaived(FrontPages &front, const Region &region, const Closing &closing)
{
    for (const HoldPoint &point : region.records().hold_points) {
        if (!point.withdrawn_on && point.closing_id == closing.id &&
            happened(point.waived_on, region.asOf()))
            front.waived.push_back({closing.title, point.kind, point.signer_role, point.waived_on,
                                    personName(region.records(), point.waived_by),
                                    point.waived_why});
    }
}

/// What an early closing lacked; the inspector decides about what nobody here can know.
std::vector<Message> missingOf(const Records &records, const Closing &closing,
                               const ClosingAnswer &answer)
{
    if (closing.made_by == MadeBy::Factory)
        return {{"no document on record in which the maker names it as closed", {}}};
    std::vector<Message> missing;
    if (closing.made_by == MadeBy::EarlierBuilder)
        missing.push_back(readiness::closedBeforeRecords());
    for (const Blocker &blocker : answer.blockers) {
        if (blocker.weight == Weight::Must)
            missing.push_back(readiness::sentence(blocker, records));
    }
    return missing;
}

FrontPages::ClosedWithGaps gapsOf(const Region &region, const Closing &closing,
                                  const ClosingAnswer &answer)
{
    FrontPages::ClosedWithGaps gaps;
    gaps.title = closing.title;
    for (const Closing::Event &event : closing.events) {
        if (!happened(event.closed_on, region.asOf()))
            continue;
        gaps.closed_on = event.closed_on;
        gaps.approximate = event.approximate;
        gaps.by = personName(region.records(), event.by);
        gaps.reason = event.reason;
    }
    gaps.missing = missingOf(region.records(), closing, answer);
    gaps.in_region = region.holds(RecordRef{RecordType::Closing, closing.id.value()});
    return gaps;
}

/// Those of the region first; the others follow them into every packet until they are accepted.
std::vector<FrontPages::ClosedWithGaps> closedWithGaps(const Region &region,
                                                       const readiness::Answer &answer)
{
    std::vector<FrontPages::ClosedWithGaps> all;
    for (const ClosingAnswer &closing : answer.closings) {
        const Closing *record = region.records().findLive(closing.id);
        if (record && closing.state == State::ClosedEarly)
            all.push_back(gapsOf(region, *record, closing));
    }
    std::stable_partition(all.begin(), all.end(),
                          [](const FrontPages::ClosedWithGaps &gaps) { return gaps.in_region; });
    return all;
}

/// Somebody has to say what becomes of a closing with gaps, and an inspector always may.
void addDecisions(FrontPages &front)
{
    for (const FrontPages::ClosedWithGaps &gaps : front.closed_with_gaps) {
        if (gaps.in_region)
            front.asked.push_back({SignerRole::Inspector,
                                   {"decide whether it may stay closed or must be opened", {}},
                                   {gaps.title},
                                   {},
                                   true});
    }
}

using CountOfKind = std::pair<std::int64_t, Message>;

std::vector<CountOfKind> countsByKind(const readiness::OnRecord &known)
{
    return {
        {known.steps, {"steps", {}}},
        {known.sessions, {"work sessions", {}}},
        {known.photos, {"photographs", {}}},
        {known.fasteners, {"fasteners and torques", {}}},
        {known.measurements, {"measurements", {}}},
        {known.material_uses, {"materials", {}}},
        {known.part_lines, {"packing lists", {}}},
        {known.checks, {"an inspection list", {}}},
    };
}

std::vector<FrontPages::Lacking> lackingByKind(const Region &region)
{
    std::vector<FrontPages::Lacking> all;
    for (const bool begun : {true, false}) {
        for (const Region::Chosen &chosen : region.chosen()) {
            if (chosen.answer->begun != begun)
                continue;
            const std::vector<CountOfKind> counts = countsByKind(chosen.answer->on_record);
            all.resize(counts.size());
            for (std::size_t i = 0; i < counts.size(); ++i) {
                all[i].kind = counts[i].second;
                if (counts[i].first == 0)
                    all[i].closings.push_back(chosen.closing->title);
            }
        }
    }
    std::erase_if(all, [](const FrontPages::Lacking &kind) { return kind.closings.empty(); });
    return all;
}

void addNotOnRecord(FrontPages &front, const Region::Chosen &chosen)
{
    FrontPages::NotOnRecord row{chosen.closing->title, {}};
    for (const auto &[count, kind] : countsByKind(chosen.answer->on_record)) {
        if (count == 0)
            row.kinds.push_back(kind);
    }
    if (!row.kinds.empty())
        front.not_on_record.push_back(std::move(row));
}

} // namespace

FrontPages::Visit visitOf(const Records &records, const Inspection &inspection, Moment asOf)
{
    const auto known = [asOf](const std::optional<Moment> &moment) {
        return happened(moment, asOf) ? moment : std::nullopt;
    };
    FrontPages::Visit visit;
    visit.kind = inspection.kind;
    visit.reference = inspection.reference;
    visit.asked_on = known(inspection.asked_on);
    visit.planned_for = inspection.planned_for;
    visit.held_on = known(inspection.held_on);
    visit.completed_on = known(inspection.completed_on);
    visit.inspector = personName(records, inspection.inspector_id);
    visit.visitor_role = visitorRole(records, inspection.inspector_id);
    visit.report_number = inspection.report_number;
    return visit;
}

FrontPages frontPages(const Region &region, const Profile &profile, const readiness::Answer &answer)
{
    FrontPages front;
    front.aircraft = aircraftOf(region.records(), profile);
    front.visits = visits(region, profile);
    front.out_of_reach = outOfReach(region, answer);
    front.closed_with_gaps = closedWithGaps(region, answer);
    front.lacking = lackingByKind(region);
    for (const Region::Chosen &chosen : region.chosen()) {
        front.to_close.push_back(toCloseOf(region.records(), chosen));
        addBlockers(front, region.records(), chosen);
        addWaived(front, region, *chosen.closing);
        addNotOnRecord(front, chosen);
    }
    std::stable_partition(front.asked.begin(), front.asked.end(), isFirst);
    addDecisions(front);
    return front;
}

} // namespace lastrivet::packet
