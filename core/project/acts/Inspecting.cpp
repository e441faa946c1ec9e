// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/Inspecting.h"

#include "core/base/SortedIds.h"
#include "core/project/acts/Signing.h"
#include "core/records/Rank.h"

#include <algorithm>

namespace lastrivet::acts {

namespace {

Id<Inspection> putHeld(Edit &edit, const HeldInspection &held)
{
    Inspection visit;
    if (const Inspection *asked = edit.records().find(held.id))
        visit = *asked;
    else
        visit.kind = held.kind;
    visit.held_on = held.held_on;
    visit.inspector_id = held.inspector_id;
    if (!held.report_number.empty())
        visit.report_number = held.report_number;
    for (const Verdict &verdict : held.verdicts)
        insertSorted(visit.hold_point_ids, verdict.hold_point_id);
    for (const auto person : held.present)
        insertSorted(visit.present, person);
    if (held.sheet_id)
        insertSorted(visit.media_ids, held.sheet_id);
    return edit.put(std::move(visit));
}

SignOff signatureOf(const HeldInspection &held, Id<Inspection> visit, const Verdict &verdict)
{
    SignOff signature;
    signature.hold_point_id = verdict.hold_point_id;
    signature.inspection_id = visit;
    signature.person_id = held.inspector_id;
    signature.credential = held.credential;
    signature.signed_on = held.held_on;
    signature.result = verdict.result;
    signature.seen = held.seen;
    signature.remarks = verdict.remarks;
    signature.scan_id = held.sheet_id;
    return signature;
}

SignerRole signerOf(Verifying verifying)
{
    switch (verifying) {
    case Verifying::Builder:
        return SignerRole::Builder;
    case Verifying::Adviser:
        return SignerRole::Adviser;
    case Verifying::InspectorByPhoto:
    case Verifying::InspectorOnSite:
        break;
    }
    return SignerRole::Inspector;
}

bool isAskedFor(const Inspection &visit, Moment by)
{
    return happened(visit.asked_on, by) || happened(visit.held_on, by);
}

bool isOver(const Inspection &visit, Moment by)
{
    return happened(visit.completed_on, by) || happened(visit.cancelled_on, by);
}

} // namespace

Id<Inspection> askForInspection(Edit &edit, Inspection asked)
{
    if (!asked.asked_on)
        asked.asked_on = edit.today();
    return edit.put(std::move(asked));
}

Id<Inspection> holdInspection(Edit &edit, const HeldInspection &held)
{
    const auto visit = putHeld(edit, held);
    for (const Verdict &verdict : held.verdicts)
        sign(edit, signatureOf(held, visit, verdict));
    for (const Finding &finding : held.findings)
        addFinding(edit, visit, finding);
    return visit;
}

void extendRequest(Edit &edit, Id<Inspection> id, const IdSet<HoldPoint> &points)
{
    edit.update(id, [&](Inspection &visit) {
        for (const auto point : points)
            insertSorted(visit.hold_point_ids, point);
    });
}

void completeInspection(Edit &edit, Id<Inspection> id, Moment on)
{
    edit.update(id, [on](Inspection &visit) { visit.completed_on = on; });
}

void cancelInspection(Edit &edit, Id<Inspection> id, Moment on)
{
    edit.update(id, [on](Inspection &visit) { visit.cancelled_on = on; });
}

Id<Squawk> addFinding(Edit &edit, Id<Inspection> id, const Finding &finding)
{
    const Inspection &visit = edit.existing(id);
    const Person *finder = edit.records().find(visit.inspector_id);
    Squawk squawk;
    squawk.number = nextNumber<Squawk>(edit.records());
    squawk.component_id = finding.component_id;
    squawk.title = finding.title;
    squawk.severity = finding.severity;
    squawk.found_on = finding.found_on ? finding.found_on
                      : visit.held_on  ? visit.held_on
                                       : edit.today();
    squawk.found_by = visit.inspector_id;
    squawk.inspection_id = id;
    squawk.finding_number = finding.number;
    squawk.note = finding.note;
    // An adviser's finding may be cleared by an adviser; anybody else's wants an inspector.
    const bool isAdvisers = finder && rankOf(*finder) == SignerRole::Adviser;
    squawk.verify_by = signerOf(
        finding.verifying.value_or(isAdvisers ? Verifying::Adviser : Verifying::InspectorOnSite));
    return edit.put(std::move(squawk));
}

std::vector<const Inspection *> openRequests(const Records &records, Moment by)
{
    std::vector<const Inspection *> open;
    for (const Inspection &visit : records.inspections) {
        if (!visit.withdrawn_on && happened(visit.asked_on, by) && !happened(visit.held_on, by) &&
            !happened(visit.completed_on, by) && !happened(visit.cancelled_on, by))
            open.push_back(&visit);
    }
    return open;
}

std::vector<const Inspection *> unfinishedVisits(const Records &records, Moment by)
{
    std::vector<const Inspection *> unfinished;
    for (const Inspection &visit : records.inspections) {
        if (!visit.withdrawn_on && isAskedFor(visit, by) && !isOver(visit, by))
            unfinished.push_back(&visit);
    }
    return unfinished;
}

std::vector<const Squawk *> openFindings(const Records &records, Id<Inspection> id, Moment by)
{
    std::vector<const Squawk *> open;
    for (const Squawk &squawk : records.squawks) {
        if (squawk.inspection_id == id && !squawk.withdrawn_on &&
            !happened(squawk.verified_on, by) && !happened(squawk.accepted_on, by))
            open.push_back(&squawk);
    }
    return open;
}

InspectionKind visitFor(HoldPointKind kind)
{
    switch (kind) {
    case HoldPointKind::Stage:
        return InspectionKind::Stage;
    case HoldPointKind::TechnicalVisit:
        return InspectionKind::TechnicalVisit;
    case HoldPointKind::Final:
        return InspectionKind::Final;
    case HoldPointKind::OwnCheck:
    case HoldPointKind::ToolAndDebrisCheck:
    case HoldPointKind::IndependentCheck:
    case HoldPointKind::PreCover:
        break;
    }
    return InspectionKind::PreCover;
}

} // namespace lastrivet::acts
