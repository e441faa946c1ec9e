// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/hours/PersonPanel.h"

#include "core/packet/InWords.h"
#include "ui/convert/QtText.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/RecordForm.h"

#include <QCheckBox>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace lastrivet::ui {

PersonPanel::PersonPanel(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_form(new RecordForm(session, RecordType::Person,
                            {{"name"}, {"credential"}, {"contact"}, {"note"}}, this))
{
    auto *roles = new QWidget(this);
    auto *flow = new Flow(roles);
    for (std::size_t i = 0; i < Words<Role>::list.size(); ++i) {
        const QString name = asSentence(packet::inWords(Role(i)));
        auto *box = new QCheckBox(name, roles);
        flow->addWidget(box);
        m_roles.push_back(box);
        connect(box, &QCheckBox::toggled, this, [this, i](bool isOn) { toggle(Role(i), isOn); });
    }
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 4, 0, 0);
    layout->addWidget(m_form);
    layout->addWidget(roles);
    show({});
}

void PersonPanel::show(Id<Person> person)
{
    m_person = person;
    setVisible(bool(person));
    m_form->show(person.value());
    fillRoles();
}

void PersonPanel::fillRoles()
{
    const Person *person = m_session.records()->findLive(m_person);
    for (std::size_t i = 0; i < m_roles.size(); ++i) {
        const QSignalBlocker quiet(m_roles[i]);
        m_roles[i]->setChecked(person && person->roles.contains(Role(i)));
        m_roles[i]->setEnabled(person && !m_session.isReadOnly());
    }
}

void PersonPanel::toggle(Role role, bool isOn)
{
    const Person *person = m_session.records()->findLive(m_person);
    if (!person)
        return;
    const QString label = tr("Roles of %1 changed").arg(toQt(person->name));
    m_session.change(label, [&](Edit &edit) {
        Person changed = edit.existing(m_person);
        if (isOn)
            changed.roles.insert(role);
        else
            changed.roles.remove(role);
        edit.put(changed);
    });
    fillRoles();
}

void PersonPanel::apply(const ChangeNotice &notice)
{
    m_form->apply(notice);
    if (!m_session.records()->findLive(m_person))
        show({});
    fillRoles();
}

void PersonPanel::startNew()
{
    Id<Person> id;
    const bool isMade = m_session.change(tr("Person added"), [&](Edit &edit) {
        Person person;
        person.name = toStd(tr("New person"));
        person.roles.insert(Role::Helper);
        id = edit.put(person);
    });
    if (!isMade)
        return;
    Q_EMIT made({RecordType::Person, id.value()});
    show(id);
    m_form->edit("name");
}

} // namespace lastrivet::ui
