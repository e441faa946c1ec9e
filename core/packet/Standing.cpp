// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/Standing.h"

#include "core/packet/Chosen.h"
#include "core/packet/InWords.h"
#include "core/readiness/Sentences.h"
#include "core/readiness/SignOffs.h"

#include <algorithm>

namespace lastrivet::packet {

namespace {

Standing::Signature signatureOf(const Records &records, const SignOff &signOff)
{
    Standing::Signature signature;
    signature.by = personName(records, signOff.person_id);
    signature.credential = signOff.credential;
    if (signature.credential.empty()) {
        if (const Person *person = records.find(signOff.person_id))
            signature.credential = person->credential;
    }
    signature.signed_on = signOff.signed_on;
    signature.result = signOff.result;
    signature.seen = signOff.seen;
    signature.remarks = signOff.remarks;
    signature.has_sheet = records.findLive(signOff.scan_id) != nullptr;
    return signature;
}

bool isOutdated(const readiness::ClosingAnswer &closing, Id<HoldPoint> point)
{
    return std::any_of(closing.blockers.begin(), closing.blockers.end(),
                       [&](const readiness::Blocker &blocker) {
                           return blocker.rule == readiness::Rule::OutdatedSignOff &&
                                  blocker.record.id == point.value();
                       });
}

/// The signatures of a hold point but for the one that counts.
std::vector<Standing::Signature> signaturesBefore(const Region &region, const HoldPoint &point,
                                                  const SignOff &latest)
{
    const auto takes = [&](const SignOff &signOff) {
        return signOff.hold_point_id == point.id && signOff.id != latest.id &&
               happened(signOff.signed_on, region.asOf());
    };
    std::vector<Standing::Signature> before;
    for (const SignOff *signOff : chosenFrom(
             region.records().sign_offs, takes, [](const SignOff &) { return 0; },
             [](const SignOff &record) { return record.signed_on; }))
        before.push_back(signatureOf(region.records(), *signOff));
    return before;
}

Standing::HoldPointLine lineOf(const Region &region, const readiness::ClosingAnswer &closing,
                               const HoldPoint &point)
{
    Standing::HoldPointLine line;
    line.id = point.id;
    line.kind = point.kind;
    line.signer_role = point.signer_role;
    line.required = point.required;
    line.source = point.source;
    if (const SignOff *signOff =
            readiness::latestSignOff(region.records(), point.id, region.asOf())) {
        line.signature = signatureOf(region.records(), *signOff);
        line.before = signaturesBefore(region, point, *signOff);
    }
    line.is_outdated = isOutdated(closing, point.id);
    line.waived_on = region.ifHappened(point.waived_on);
    if (line.waived_on) {
        line.waived_by = personName(region.records(), point.waived_by);
        line.waived_why = point.waived_why;
    }
    return line;
}

std::vector<Standing::HoldPointLine> holdPoints(const Region &region,
                                                const readiness::ClosingAnswer &closing)
{
    const auto takes = [&](const HoldPoint &point) {
        return point.closing_id == closing.id &&
               (!point.planned_on || happened(point.planned_on, region.asOf()) ||
                happened(point.waived_on, region.asOf()));
    };
    std::vector<Standing::HoldPointLine> lines;
    for (const HoldPoint *point : chosenFrom(
             region.records().hold_points, takes,
             // Who comes from outside signs first: tools are counted last, on the day of closing.
             [](const HoldPoint &record) { return -int(record.signer_role); },
             [](const HoldPoint &) { return std::optional<Moment>{}; }))
        lines.push_back(lineOf(region, closing, *point));
    return lines;
}

std::vector<Standing::Event> events(const Region &region, const Closing &closing)
{
    std::vector<Standing::Event> events;
    for (const Closing::Event &event : closing.events) {
        const std::optional<Moment> closed = region.ifHappened(event.closed_on);
        const std::optional<Moment> opened = region.ifHappened(event.opened_on);
        if (closed || opened)
            events.push_back({closed, opened, personName(region.records(), event.by), event.reason,
                              event.approximate});
    }
    return events;
}

std::vector<Standing::RuleLine> rules(const Region &region, const Profile &profile,
                                      const readiness::ClosingAnswer &closing)
{
    const Records &records = region.records();
    std::vector<Standing::RuleLine> lines;
    for (const readiness::LedgerLine &entry : readiness::ledger(closing, records, region.asOf())) {
        Standing::RuleLine line{entry.rule,
                                entry.outcome,
                                readiness::demandOf(entry.rule),
                                readiness::countedBy(entry.rule, entry.looked_at),
                                {},
                                entry.looked_at == 0};
        for (const readiness::Blocker &blocker : entry.blockers)
            line.findings.push_back({blocker.weight, readiness::sentence(blocker, records),
                                     readiness::clearedBy(blocker, records, profile),
                                     readiness::source(blocker, records, profile), blocker.facts});
        lines.push_back(std::move(line));
    }
    return lines;
}

std::vector<Standing::Signature> lateAcceptances(const Region &region, const Closing &closing)
{
    std::vector<Standing::Signature> signatures;
    for (const Id<SignOff> id : closing.late_acceptances) {
        const SignOff *signOff = region.records().findLive(id);
        if (signOff && happened(signOff->signed_on, region.asOf()))
            signatures.push_back(signatureOf(region.records(), *signOff));
    }
    return signatures;
}

Standing withoutRules(const Region &region, const Region::Chosen &chosen)
{
    const Closing &record = *chosen.closing;
    const readiness::ClosingAnswer &closing = *chosen.answer;
    Standing standing;
    standing.id = record.id;
    standing.title = record.title;
    standing.part = partPath(region.records(), record.component_id);
    for (const Id<Component> part : record.encloses)
        standing.encloses.push_back(partName(region.records(), part));
    standing.scope = record.scope;
    standing.permanent = record.permanent;
    standing.made_by = record.made_by;
    standing.method = record.method;
    standing.state = closing.state;
    standing.begun = closing.begun;
    standing.events = events(region, record);
    standing.hold_points = holdPoints(region, closing);
    standing.late_acceptances = lateAcceptances(region, record);
    standing.on_record = closing.on_record;
    return standing;
}

/// A box inside one of the chosen closings: permanent, and of a part that this one hides.
bool isWithin(const Region &region, const Closing &inner)
{
    if (!inner.permanent || inner.scope == ClosingScope::Aircraft || region.isChosen(inner.id))
        return false;
    return std::any_of(
        region.chosen().begin(), region.chosen().end(), [&](const Region::Chosen &outer) {
            const IdSet<Component> &reach = outer.answer->reach;
            return outer.closing->component_id != inner.component_id &&
                   std::binary_search(reach.begin(), reach.end(), inner.component_id);
        });
}

} // namespace

Message inWords(readiness::State state, bool begun)
{
    if (!begun)
        return {"not begun", {}};
    if (state == readiness::State::ReadyToSign)
        return {"stays open, waits for the builder's signature", {}};
    return readiness::stateInWords(state);
}

Standing standing(const Region &region, const Profile &profile, const Region::Chosen &chosen)
{
    Standing standing = withoutRules(region, chosen);
    standing.rules = rules(region, profile, *chosen.answer);
    return standing;
}

std::vector<Standing> standings(const Region &region, const Profile &profile)
{
    std::vector<Standing> all;
    for (const Region::Chosen &chosen : region.chosen())
        all.push_back(standing(region, profile, chosen));
    return all;
}

std::vector<Standing> standingsWithin(const Region &region, const readiness::Answer &answer)
{
    std::vector<Standing> within;
    for (const readiness::ClosingAnswer &inner : answer.closings) {
        const Closing *record = region.records().findLive(inner.id);
        if (record && isWithin(region, *record))
            within.push_back(withoutRules(region, {record, &inner}));
    }
    return within;
}

} // namespace lastrivet::packet
