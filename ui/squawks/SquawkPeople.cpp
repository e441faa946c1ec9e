// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkPeople.h"

#include "core/project/acts/Signing.h"
#include "core/project/acts/SquawkActs.h"
#include "ui/convert/QtText.h"

#include <QCoreApplication>

#include <algorithm>

namespace lastrivet::ui {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("SquawkPeople", text);
}

} // namespace

std::vector<const Person *> everybody(const Records &records)
{
    std::vector<const Person *> people;
    for (const Person &person : records.people) {
        if (!person.withdrawn_on)
            people.push_back(&person);
    }
    return people;
}

std::vector<const Person *> peopleWhoMayAccept(const Records &records, const Squawk &squawk)
{
    auto people = everybody(records);
    std::erase_if(people, [&](const Person *person) {
        return acts::whyNotAccept(squawk, *person).has_value();
    });
    return people;
}

const Person *personNamed(const Records &records, const QString &name)
{
    const auto people = everybody(records);
    const auto found = std::ranges::find_if(people, [&](const Person *person) {
        return toQt(person->name).compare(name.trimmed(), Qt::CaseInsensitive) == 0;
    });
    return found == people.end() ? nullptr : *found;
}

QString verifierOf(const Records &records, const Squawk &squawk)
{
    const auto needed = squawk.verify_by.value_or(SignerRole::Builder);
    const auto people = acts::peopleWhoMaySign(records, needed);
    const QString name = people.size() == 1 ? toQt(people.front()->name) : QString();
    switch (needed) {
    case SignerRole::Inspector:
        return name.isEmpty() ? tr("the inspector") : tr("the inspector (%1)").arg(name);
    case SignerRole::Adviser:
        return name.isEmpty() ? tr("the adviser") : tr("the adviser (%1)").arg(name);
    case SignerRole::Builder:
        break;
    }
    return tr("the builder");
}

} // namespace lastrivet::ui
