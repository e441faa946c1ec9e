// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/SquawkActs.h"

#include "core/records/Rank.h"

namespace lastrivet::acts {

Id<Squawk> addSquawk(Edit &edit, Squawk draft)
{
    if (draft.number.empty())
        draft.number = nextNumber<Squawk>(edit.records());
    if (!draft.found_on)
        draft.found_on = edit.today();
    if (!draft.found_by)
        draft.found_by = edit.records().project.builder_id;
    return edit.put(std::move(draft));
}

void fixSquawk(Edit &edit, Id<Squawk> squawk, std::string_view correction, Moment on, Id<Person> by)
{
    edit.update(squawk, [&](Squawk &changed) {
        changed.correction = std::string(correction);
        changed.fixed_on = on;
        changed.fixed_by = by;
        changed.verified_on.reset();
        changed.verified_by = {};
    });
}

void verifySquawk(Edit &edit, Id<Squawk> squawk, Moment on, Id<Person> by)
{
    edit.update(squawk, [&](Squawk &changed) {
        changed.verified_on = on;
        changed.verified_by = by;
    });
}

void acceptSquawk(Edit &edit, Id<Squawk> squawk, Moment on, Id<Person> by, std::string_view basis)
{
    edit.update(squawk, [&](Squawk &changed) {
        changed.accepted_on = on;
        changed.accepted_by = by;
        changed.accepted_basis = std::string(basis);
    });
}

void takeBack(Edit &edit, Id<Squawk> squawk, std::string_view remark)
{
    edit.update(squawk, [&](Squawk &changed) {
        if (changed.accepted_on) {
            changed.accepted_on.reset();
            changed.accepted_by = {};
            changed.accepted_basis.clear();
        } else if (changed.verified_on) {
            changed.verified_on.reset();
            changed.verified_by = {};
        } else {
            changed.fixed_on.reset();
            changed.fixed_by = {};
        }
        changed.note += (changed.note.empty() ? "" : "\n") + std::string(remark);
    });
}

Id<Squawk> foundAgain(Edit &edit, Id<Squawk> squawk, std::string_view remark)
{
    const Squawk &old = edit.existing(squawk);
    Squawk again;
    again.component_id = old.component_id;
    again.title = old.title;
    again.detail = old.detail;
    again.severity = old.severity;
    again.verify_by = old.verify_by;
    again.needs_access_to = old.needs_access_to;
    again.not_inside = old.not_inside;
    again.estimate_minutes = old.estimate_minutes;
    again.note = std::string(remark);
    return addSquawk(edit, std::move(again));
}

std::optional<Message> whyNotVerify(const Squawk &squawk, const Person &person)
{
    const auto needed = squawk.verify_by.value_or(SignerRole::Builder);
    if (maySignAs(person, needed))
        return std::nullopt;
    switch (needed) {
    case SignerRole::Inspector:
        return Message{"Squawk {0} is for an inspector to verify; {1} is none.",
                       {squawk.number, person.name}};
    case SignerRole::Adviser:
        return Message{"Squawk {0} is for an adviser or an inspector to verify; {1} is neither.",
                       {squawk.number, person.name}};
    case SignerRole::Builder:
        break;
    }
    return Message{
        "A correction is verified by a builder, an adviser or an inspector; {0} is none of them.",
        {person.name}};
}

std::optional<Message> whyNotAccept(const Squawk &squawk, const Person &person)
{
    const bool may = person.roles.meets({Role::Designer, Role::Adviser, Role::Inspector});
    if (squawk.severity != Severity::Airworthiness || may)
        return std::nullopt;
    return Message{"Squawk {0} matters for airworthiness: only a designer, an adviser or an "
                   "inspector may accept it as it is, and {1} is none of them.",
                   {squawk.number, person.name}};
}

std::optional<Message> whyNotOn(const Squawk &squawk, Moment on, Moment now)
{
    if (after(on, now))
        return Message{"{0} has not come yet.", {on.text()}};
    if (squawk.found_on && after(*squawk.found_on, on))
        return Message{"Squawk {0} was found on {1}, after {2}.",
                       {squawk.number, squawk.found_on->text(), on.text()}};
    return std::nullopt;
}

std::optional<Message> whyNotVerifiedOn(const Squawk &squawk, Moment on, Moment now)
{
    if (squawk.fixed_on && after(*squawk.fixed_on, on))
        return Message{"Squawk {0} was fixed on {1}; nobody can have looked at that on {2}.",
                       {squawk.number, squawk.fixed_on->text(), on.text()}};
    return whyNotOn(squawk, on, now);
}

std::optional<Message> whyNotDated(const Squawk &squawk, Moment now)
{
    for (const auto &moment :
         {squawk.found_on, squawk.fixed_on, squawk.verified_on, squawk.accepted_on}) {
        if (moment && after(*moment, now))
            return Message{"{0} has not come yet.", {moment->text()}};
    }
    return std::nullopt;
}

bool isOpen(const Squawk &squawk)
{
    return !squawk.verified_on && !squawk.accepted_on;
}

std::string_view progressWord(const Squawk &squawk, Moment asOf)
{
    return happened(squawk.verified_on, asOf)   ? "verified"
           : happened(squawk.accepted_on, asOf) ? "accepted"
           : happened(squawk.fixed_on, asOf)    ? "fixed"
                                                : "open";
}

} // namespace lastrivet::acts
