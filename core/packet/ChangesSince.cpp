// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/ChangesSince.h"

#include "core/base/Tongue.h"
#include "core/packet/Chosen.h"
#include "core/packet/InWords.h"
#include "core/readiness/Names.h"
#include "core/readiness/SignOffs.h"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <iterator>
#include <utility>

namespace lastrivet::packet {

namespace {

using Change = ChangesSince::Change;

Message named(std::string_view pattern, const std::string &name)
{
    return {pattern, {name}};
}

/// Which of the moments of a record a fact is about: the `nth` of those that are `on`. Two things
/// done at one moment are two facts that look alike.
std::size_t which(Moment on, int nth, std::initializer_list<std::optional<Moment>> moments)
{
    std::size_t found = 0;
    for (std::size_t i = 0; i < moments.size(); ++i) {
        if (std::data(moments)[i] != on)
            continue;
        found = i;
        if (nth-- == 0)
            break;
    }
    return found;
}

void describe(Change &change, const Records &records, const WorkSession &session, int)
{
    change.what = {"Work: {0}", {nested(inWords(session.kind))}};
    if (const Step *step = records.findLive(session.step_id))
        change.what = named("Work on: {0}", step->title);
    change.part = partName(records, session.component_id);
    change.note = session.note;
    for (const WorkSession::Worker &worker : session.workers)
        change.by += (change.by.empty() ? "" : ", ") + personName(records, worker.person_id);
    if (session.workers.empty())
        change.by = personName(records, records.project.builder_id);
}
void describe(Change &change, const Records &records, const Step &step, int)
{
    change.what = named("Step done: {0}", step.title);
    change.part = partName(records, step.component_id);
}
void describe(Change &change, const Records &records, const Squawk &squawk, int nth)
{
    const bool isFixed = which(change.on, nth, {squawk.found_on, squawk.fixed_on}) == 1;
    change.what = {isFixed ? "Squawk {0} corrected: {1}" : "Squawk {0} found: {1}",
                   {squawk.number, squawk.title}};
    change.part = partName(records, squawk.component_id);
    change.by = personName(records, isFixed ? squawk.fixed_by : squawk.found_by);
    change.note = isFixed ? squawk.correction : squawk.detail;
}
void describe(Change &change, const Records &, const Deviation &deviation, int nth)
{
    constexpr std::array<std::string_view, 3> patterns{
        "Deviation {0} raised: {1}", "Deviation {0} built: {1}", "Deviation {0} undone: {1}"};
    const auto pattern = patterns[which(
        change.on, nth, {deviation.raised_on, deviation.built_on, deviation.undone_on})];
    change.what = {pattern, {deviation.number, deviation.title}};
    change.note = deviation.built_as;
}
void describe(Change &change, const Records &, const Bulletin &bulletin, int)
{
    change.what = {"Complied with {0}: {1}", {bulletin.number, bulletin.title}};
    change.note = bulletin.basis;
}
void describe(Change &change, const Records &records, const Fastener &fastener, int nth)
{
    constexpr std::array<std::string_view, 3> patterns{"Fitted: {0}", "Torqued: {0}",
                                                       "Removed: {0}"};
    const std::size_t act =
        which(change.on, nth, {fastener.fitted_on, fastener.torqued_on, fastener.removed_on});
    const RecordRef ref{RecordType::Fastener, fastener.id.value()};
    change.what = named(patterns[act], nested(readiness::named(records, ref)));
    change.part = partName(records, fastener.component_id);
    change.note = act == 2 ? fastener.removed_why : fastener.note;
    if (act == 1)
        change.torque.emplace().id = fastener.id;
}
void describe(Change &change, const Records &records, const MaterialUse &use, int)
{
    const RecordRef ref{RecordType::MaterialUse, use.id.value()};
    change.what = named("Material used: {0}", nested(readiness::named(records, ref)));
    change.part = partName(records, use.component_id);
}
void describe(Change &change, const Records &records, const Closing &closing, int)
{
    change.what = named("Opened again: {0}", closing.title);
    for (const Closing::Event &event : closing.events) {
        if (event.opened_on != change.on)
            continue;
        change.by = personName(records, event.by);
        change.note = event.reason;
    }
}
void describe(Change &change, const Records &records, const SignOff &signOff, int)
{
    change.what = {"Another look inside", {}};
    change.by = personName(records, signOff.person_id);
    change.note = signOff.remarks;
}

template <class Record>
bool describeIf(Change &change, const Records &records, RecordRef ref, int nth)
{
    const Record *record = ref.type == Record::type ? records.find(Id<Record>{ref.id}) : nullptr;
    if (record)
        describe(change, records, *record, nth);
    return record != nullptr;
}

template <class... Record>
void describeAmong(Change &change, const Records &records, RecordRef ref, int nth)
{
    if (!(describeIf<Record>(change, records, ref, nth) || ...))
        change.what = readiness::named(records, ref);
}

Change changeOf(const Records &records, const readiness::Fact &fact, int nth)
{
    Change change{.on = fact.moment};
    change.is_certain = fact.heavy;
    describeAmong<WorkSession, Step, Squawk, Deviation, Bulletin, Fastener, MaterialUse, Closing,
                  SignOff>(change, records, fact.record, nth);
    return change;
}

std::vector<Change> changesOf(const Region &region, const readiness::ClosingAnswer &closing,
                              Id<HoldPoint> point)
{
    const Records &records = region.records();
    std::vector<Change> changes;
    for (const readiness::Blocker &blocker : closing.blockers) {
        if (blocker.rule != readiness::Rule::OutdatedSignOff || blocker.record.id != point.value())
            continue;
        // Facts that look alike stand next to each other.
        const readiness::Fact *last = nullptr;
        int nth = 0;
        for (const readiness::Fact &fact : blocker.facts) {
            nth = last && *last == fact ? nth + 1 : 0;
            Change &change = changes.emplace_back(changeOf(records, fact, nth));
            if (change.torque)
                change.torque = fastenerEntry(region, *records.find(change.torque->id));
            last = &fact;
        }
    }
    std::stable_sort(changes.begin(), changes.end(),
                     [](const Change &a, const Change &b) { return sortsBefore(a.on, b.on); });
    return changes;
}

bool isOfVisit(const Records &records, const SquawkEntry &entry, const SignOff &signature)
{
    const Squawk *squawk = records.find(entry.id);
    return signature.inspection_id && squawk && squawk->inspection_id == signature.inspection_id;
}

bool isOpenAirworthiness(const SquawkEntry &entry)
{
    return entry.severity == Severity::Airworthiness &&
           (entry.state == SquawkEntry::State::Open || entry.state == SquawkEntry::State::Fixed);
}

std::vector<SquawkEntry> findingsInside(const Region &region, const SignOff &signature)
{
    std::vector<SquawkEntry> found;
    for (SquawkEntry &entry : squawks(region, {})) {
        if (isOfVisit(region.records(), entry, signature) || isOpenAirworthiness(entry))
            found.push_back(std::move(entry));
    }
    std::stable_partition(found.begin(), found.end(), [](const SquawkEntry &entry) {
        return entry.state == SquawkEntry::State::Open;
    });
    return found;
}

std::vector<Photo> photosSince(const Region &region, Moment signedOn)
{
    std::vector<Photo> since;
    for (Photo &photo : photos(region)) {
        if (photo.taken_on && after(*photo.taken_on, signedOn))
            since.push_back(std::move(photo));
    }
    std::stable_sort(since.begin(), since.end(), [](const Photo &a, const Photo &b) {
        return sortsBefore(*b.taken_on, *a.taken_on);
    });
    return since;
}

} // namespace

std::optional<ChangesSince> changesSince(const Records &records, const Profile &profile,
                                         const readiness::Answer &answer, Id<HoldPoint> id)
{
    const HoldPoint *point = records.findLive(id);
    const auto *closing = point ? answer.closing(point->closing_id) : nullptr;
    if (!closing)
        return std::nullopt;
    const Region region(records, answer, {point->closing_id});
    const SignOff *signOff = readiness::latestSignOff(records, id, answer.as_of);
    if (!signOff || region.chosen().empty())
        return std::nullopt;
    const Standing here = standing(region, profile, region.chosen().front());
    ChangesSince since{.as_of = answer.as_of};
    since.aircraft = aircraftOf(records, profile);
    since.cautions = profile.cautions;
    since.closing = here.title;
    since.part = here.part;
    since.kind = point->kind;
    since.signer_role = point->signer_role;
    for (const Standing::HoldPointLine &line : here.hold_points) {
        if (line.id == id && line.signature)
            since.signature = *line.signature;
    }
    since.changes = changesOf(region, *closing, id);
    if (const Inspection *visit = records.findLive(signOff->inspection_id))
        since.report = visit->report_number.empty() ? visit->reference : visit->report_number;
    since.findings = findingsInside(region, *signOff);
    since.photos = photosSince(region, *signOff->signed_on);
    return since;
}

} // namespace lastrivet::packet
