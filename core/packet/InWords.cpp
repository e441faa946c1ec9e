// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/InWords.h"

#include "core/records/KindNames.h"
#include "core/records/Rank.h"
#include "core/records/invariants/Ancestors.h"

#include <array>

namespace lastrivet::packet {

namespace {

template <class Word, std::size_t count>
Message chosen(const std::array<std::string_view, count> &words, Word word)
{
    static_assert(count == Words<Word>::list.size());
    return Message{words[std::size_t(word)], {}};
}

} // namespace

std::string partName(const Records &records, Id<Component> part)
{
    const Component *component = records.find(part);
    if (!component)
        return {};
    return component->code.empty() ? component->name : component->code + " " + component->name;
}

std::string partPath(const Records &records, Id<Component> part)
{
    std::string path;
    invariants::anyUpwards(records, part, [&](const Component &step) {
        path = path.empty() ? step.name : step.name + " › " + path;
        return false;
    });
    return path;
}

std::string personName(const Records &records, Id<Person> person)
{
    const Person *record = records.find(person);
    return record ? record->name : std::string{};
}

SignerRole visitorRole(const Records &records, Id<Person> person)
{
    const Person *record = records.find(person);
    return record && rankOf(*record) == SignerRole::Adviser ? SignerRole::Adviser
                                                            : SignerRole::Inspector;
}

Message inWords(HoldPointKind kind)
{
    return kindName(kind);
}

Message inWords(InspectionKind kind)
{
    return kindName(kind);
}

Message inWords(SignerRole role)
{
    return chosen(std::array<std::string_view, 3>{"builder", "adviser", "inspector"}, role);
}

Message inWords(SignOffResult result)
{
    return chosen(std::array<std::string_view, 3>{"accepted", "accepted with findings", "rejected"},
                  result);
}

Message inWords(Seen seen)
{
    return chosen(
        std::array<std::string_view, 4>{"seen on site", "by photograph", "by video", "by message"},
        seen);
}

Message inWords(Severity severity)
{
    return chosen(std::array<std::string_view, 3>{"airworthiness", "workmanship", "cosmetic"},
                  severity);
}

Message inWords(Decision decision)
{
    return chosen(std::array<std::string_view, 2>{"approved", "rejected"}, decision);
}

Message inWords(BulletinKind kind)
{
    return chosen(
        std::array<std::string_view, 4>{"bulletin", "letter", "directive", "drawing change"}, kind);
}

Message inWords(Locking locking)
{
    return chosen(std::array<std::string_view, 7>{"self-locking nut", "split pin", "safety wire",
                                                  "jam nut", "lock tab", "thread locker", "none"},
                  locking);
}

Message inWords(Sample sample)
{
    return chosen(
        std::array<std::string_view, 4>{"no sample", "sample kept", "sample good", "sample failed"},
        sample);
}

Message inWords(WorkKind kind)
{
    return chosen(std::array<std::string_view, 7>{"fabrication", "assembly", "finishing", "rework",
                                                  "inspection", "planning", "other"},
                  kind);
}

Message inWords(Role role)
{
    return chosen(std::array<std::string_view, 7>{"builder", "helper", "earlier builder",
                                                  "commercial help", "designer", "adviser",
                                                  "inspector"},
                  role);
}

} // namespace lastrivet::packet
