// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Tongue.h"
#include "core/records/Rank.h"
#include "core/records/invariants/Families.h"

namespace lastrivet::invariants {

namespace {

/// Calls `body` with each live record that is under review or names a person who is.
template <class Record, class Body>
void eachBySigner(const Review &review, Id<Person> Record::*signer, Body &&body)
{
    if (!review.touchesAny(Record::type, RecordType::Person))
        return;
    for (const Record &record : review.records().template of<Record>()) {
        const Person *person = review.records().find(record.*signer);
        if (!person || record.withdrawn_on)
            continue;
        if (review.covers({Record::type, record.id.value()}) ||
            review.covers({RecordType::Person, person->id.value()}))
            body(record, *person);
    }
}

void checkVerified(Review &review, const Squawk &squawk, const Person &person)
{
    const auto needed = squawk.verify_by.value_or(SignerRole::Builder);
    if (!maySignAs(person, needed))
        review.report(squawk, "{0} is for {1} or a higher role to verify, which {2} does not have.",
                      {nested({word(needed), {}}), review.nameOf(person.id)});
}

void checkAccepted(Review &review, const Squawk &squawk, const Person &person)
{
    const bool mayAccept = person.roles.contains(Role::Designer) ||
                           person.roles.contains(Role::Adviser) ||
                           person.roles.contains(Role::Inspector);
    if (squawk.severity == Severity::Airworthiness && !mayAccept)
        review.report(squawk,
                      "{0} matters for airworthiness and is for a designer, adviser or inspector "
                      "to accept, which {1} is not.",
                      {review.nameOf(person.id)});
}

void checkWaived(Review &review, const HoldPoint &point, const Person &person)
{
    if (point.required && point.signer_role == SignerRole::Inspector && point.waived_on &&
        !person.roles.contains(Role::Inspector))
        review.report(point, "{0} is required and an inspector's; {1} cannot waive it.",
                      {review.nameOf(person.id)});
}

void checkSignOff(Review &review, const SignOff &signOff)
{
    const Person *person = review.records().find(signOff.person_id);
    const HoldPoint *point = review.records().find(signOff.hold_point_id);
    if (person && point && !maySignAs(*person, point->signer_role))
        review.report(signOff, "{0} is for {1} or a higher role to sign, which {2} does not have.",
                      {nested({word(point->signer_role), {}}), review.nameOf(person->id)});
}

bool mayAcceptLate(const Profile &profile, const SignOff &signOff, const Person &person)
{
    if (person.roles.contains(Role::Inspector))
        return true;
    if (profile.late_acceptance_by.contains(SignerRole::Adviser) &&
        person.roles.contains(Role::Adviser))
        return true;
    return profile.late_acceptance_by.contains(SignerRole::Builder) &&
           person.roles.contains(Role::Builder) && !signOff.remarks.empty();
}

void checkLateAcceptance(Review &review, const Closing &closing, const SignOff &signOff)
{
    if (signOff.hold_point_id)
        review.report(closing, "{0} is accepted late by {1}, which is of a hold point.",
                      {review.nameOf(signOff.id)});
    const Person *person = review.records().find(signOff.person_id);
    if (person && !mayAcceptLate(review.profile(), signOff, *person))
        review.report(closing,
                      "{0} is accepted late by {1}, who may not do that under this rule profile; a "
                      "builder who may must add remarks.",
                      {review.nameOf(person->id)});
}

void checkSignOffs(Review &review)
{
    using enum RecordType;
    if (!review.touchesAny(SignOff, HoldPoint, Person))
        return;
    for (const auto &signOff : review.records().sign_offs) {
        if (!signOff.withdrawn_on && (review.covers({SignOff, signOff.id.value()}) ||
                                      review.covers({HoldPoint, signOff.hold_point_id.value()}) ||
                                      review.covers({Person, signOff.person_id.value()})))
            checkSignOff(review, signOff);
    }
}

void checkLateAcceptances(Review &review)
{
    using enum RecordType;
    if (!review.touchesAny(SignOff, Closing, Person))
        return;
    for (const auto &closing : review.records().closings) {
        if (closing.withdrawn_on)
            continue;
        for (const auto id : closing.late_acceptances) {
            const auto *signOff = review.records().findLive(id);
            if (signOff && (review.covers({Closing, closing.id.value()}) ||
                            review.covers({SignOff, id.value()}) ||
                            review.covers({Person, signOff->person_id.value()})))
                checkLateAcceptance(review, closing, *signOff);
        }
    }
}

} // namespace

void checkAuthority(Review &review)
{
    eachBySigner(review, &Squawk::verified_by, [&](const Squawk &squawk, const Person &person) {
        checkVerified(review, squawk, person);
    });
    eachBySigner(review, &Squawk::accepted_by, [&](const Squawk &squawk, const Person &person) {
        checkAccepted(review, squawk, person);
    });
    eachBySigner(review, &HoldPoint::waived_by, [&](const HoldPoint &point, const Person &person) {
        checkWaived(review, point, person);
    });
    checkSignOffs(review);
    checkLateAcceptances(review);
}

} // namespace lastrivet::invariants
