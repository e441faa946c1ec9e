// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/SquawkActs.h"

namespace lastrivet::acts {

namespace {

bool hasRank(const Person &person, SignerRole needed)
{
    if (person.roles.contains(Role::Inspector))
        return true;
    if (person.roles.contains(Role::Adviser))
        return needed != SignerRole::Inspector;
    return person.roles.contains(Role::Builder) && needed == SignerRole::Builder;
}

} // namespace

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

void fixSquawk(Edit &edit, Id<Squawk> squawk, std::string_view correction, Moment on,
               Id<Person> by)
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

void reopenSquawk(Edit &edit, Id<Squawk> squawk)
{
    edit.update(squawk, [](Squawk &changed) {
        changed.fixed_on.reset();
        changed.fixed_by = {};
        changed.verified_on.reset();
        changed.verified_by = {};
        changed.accepted_on.reset();
        changed.accepted_by = {};
        changed.accepted_basis.clear();
    });
}

std::optional<Message> whyNotVerify(const Squawk &squawk, const Person &person)
{
    const auto needed = squawk.verify_by.value_or(SignerRole::Builder);
    if (hasRank(person, needed))
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

bool isOpen(const Squawk &squawk)
{
    return !squawk.verified_on && !squawk.accepted_on;
}

} // namespace lastrivet::acts
