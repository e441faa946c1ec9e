// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/PeopleNamed.h"

#include "ui/convert/QtText.h"

#include <QStringList>

#include <algorithm>

namespace lastrivet::ui {

namespace {

Id<Person> personNamed(Edit &edit, const QString &name)
{
    for (const Person &known : edit.records().people) {
        if (!known.withdrawn_on && name.compare(toQt(known.name), Qt::CaseInsensitive) == 0)
            return known.id;
    }
    Person person;
    person.name = toStd(name);
    person.roles.insert(Role::Helper);
    return edit.put(std::move(person));
}

} // namespace

IdSet<Person> peopleNamed(Edit &edit, const QString &names)
{
    IdSet<Person> people;
    for (const QString &name : names.split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        if (!name.trimmed().isEmpty())
            people.push_back(personNamed(edit, name.trimmed()));
    }
    std::ranges::sort(people);
    const auto repeated = std::ranges::unique(people);
    people.erase(repeated.begin(), repeated.end());
    return people;
}

} // namespace lastrivet::ui
