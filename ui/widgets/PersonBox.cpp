// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/PersonBox.h"

#include "core/project/acts/Signing.h"
#include "ui/convert/QtText.h"

#include <algorithm>

namespace lastrivet::ui {

namespace {

Role roleOf(SignerRole role)
{
    switch (role) {
    case SignerRole::Inspector:
        return Role::Inspector;
    case SignerRole::Adviser:
        return Role::Adviser;
    case SignerRole::Builder:
        break;
    }
    return Role::Builder;
}

} // namespace

PersonBox::PersonBox(QWidget *parent)
    : QComboBox(parent)
{
    setEditable(true);
    setInsertPolicy(QComboBox::NoInsert);
    setMinimumContentsLength(18);
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    connect(this, &QComboBox::editTextChanged, this, &PersonBox::named);
}

void PersonBox::offer(const Records &records, SignerRole role, Id<Person> preferred)
{
    offer(
        records, [role](const Records &those) { return acts::peopleWhoMaySign(those, role); },
        roleOf(role), preferred);
}

void PersonBox::offer(const Records &records, const People &people, Role roleOfNew,
                      Id<Person> preferred)
{
    m_people = people;
    m_role = roleOfNew;
    m_known.clear();
    for (const Person &person : records.people) {
        if (!person.withdrawn_on)
            m_known.append(toQt(person.name));
    }
    clear();
    int chosen = 0;
    for (const Person *person : people(records)) {
        if (person->id == preferred)
            chosen = count();
        addItem(toQt(person->name), qlonglong(person->id.value()));
    }
    setCurrentIndex(count() > 0 ? chosen : -1);
}

bool PersonBox::isFilled() const
{
    return !currentText().trimmed().isEmpty();
}

Id<Person> PersonBox::person() const
{
    const QString typed = currentText().trimmed();
    // Two people may have the same name: the one that was chosen counts.
    const int chosen = currentIndex();
    const bool isChosen =
        chosen >= 0 && itemText(chosen).trimmed().compare(typed, Qt::CaseInsensitive) == 0;
    const int row = isChosen ? chosen : findText(typed, Qt::MatchFixedString);
    return row < 0 ? Id<Person>{} : Id<Person>{itemData(row).toLongLong()};
}

Id<Person> PersonBox::cameSince(const Records &records) const
{
    const QString typed = currentText().trimmed();
    if (!m_people || typed.isEmpty())
        return {};
    for (const Person *each : m_people(records)) {
        if (typed.compare(toQt(each->name), Qt::CaseInsensitive) == 0)
            return each->id;
    }
    return {};
}

QString PersonBox::newcomerWords() const
{
    const QString typed = currentText().trimmed();
    if (typed.isEmpty() || person() || m_known.contains(typed, Qt::CaseInsensitive))
        return {};
    return tr("“%1” is not on record yet, and becomes a person there with this.").arg(typed);
}

QString PersonBox::whyNot(const Records &records) const
{
    if (!isFilled())
        return tr("It needs a name.");
    if (person() || cameSince(records))
        return {};
    const QString typed = currentText().trimmed();
    const bool isKnown = std::ranges::any_of(records.people, [&](const Person &known) {
        return !known.withdrawn_on && typed.compare(toQt(known.name), Qt::CaseInsensitive) == 0;
    });
    if (!isKnown)
        return {};
    if (m_role == Role::Inspector) {
        return tr("%1 is on record, but not as an inspector, and only an inspector's word counts "
                  "here.")
            .arg(typed);
    }
    if (m_role == Role::Adviser) {
        return tr("%1 is on record, but neither as an adviser nor as an inspector, and only their "
                  "word counts here.")
            .arg(typed);
    }
    if (m_role == Role::Builder)
        return tr("%1 is on record, but not as a builder, adviser or inspector.").arg(typed);
    return tr("%1 is on record, but not in a role that counts here.").arg(typed);
}

Id<Person> PersonBox::personIn(Edit &edit) const
{
    if (const auto known = person())
        return known;
    if (const auto known = cameSince(edit.records()))
        return known;
    Person person;
    person.name = toStd(currentText());
    person.roles.insert(m_role);
    return edit.put(std::move(person));
}

} // namespace lastrivet::ui
