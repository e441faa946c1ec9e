// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/Signing.h"

#include "core/records/Rank.h"

#include <algorithm>

namespace lastrivet::acts {

namespace {

void linkSheet(Edit &edit, Id<SignOff> id, Id<Media> sheet)
{
    edit.update(sheet, [id](Media &media) {
        media.shows.insert(Shows::SignedSheet);
        const Media::Link link{RecordType::SignOff, id.value()};
        if (std::ranges::find(media.links, link) == media.links.end())
            media.links.push_back(link);
    });
}

} // namespace

Id<SignOff> sign(Edit &edit, SignOff signature)
{
    const Person *person = edit.records().find(signature.person_id);
    if (signature.credential.empty() && person)
        signature.credential = person->credential;
    const auto sheet = signature.scan_id;
    const auto id = edit.put(std::move(signature));
    if (sheet)
        linkSheet(edit, id, sheet);
    return id;
}

void withdrawSignature(Edit &edit, Id<SignOff> id, std::string_view why)
{
    std::vector<Id<Closing>> naming;
    for (const Closing &closing : edit.records().closings) {
        if (std::ranges::binary_search(closing.late_acceptances, id))
            naming.push_back(closing.id);
    }
    for (const auto closing : naming)
        edit.update(closing, [id](Closing &copy) { std::erase(copy.late_acceptances, id); });
    edit.withdraw(id, why);
}

void attachSheet(Edit &edit, Id<SignOff> id, Id<Media> sheet)
{
    edit.update(id, [sheet](SignOff &signature) { signature.scan_id = sheet; });
    linkSheet(edit, id, sheet);
}

void waive(Edit &edit, Id<HoldPoint> id, Moment on, Id<Person> by, std::string_view why)
{
    edit.update(id, [&](HoldPoint &point) {
        point.waived_on = on;
        point.waived_by = by;
        point.waived_why = std::string(why);
    });
}

std::vector<const Person *> peopleWhoMaySign(const Records &records, SignerRole role)
{
    std::vector<const Person *> people;
    for (const Person &person : records.people) {
        if (!person.withdrawn_on && maySignAs(person, role))
            people.push_back(&person);
    }
    return people;
}

} // namespace lastrivet::acts
