// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Person.h"
#include "ui/shell/Session.h"

#include <QWidget>

#include <vector>

class QCheckBox;

namespace lastrivet::ui {

class RecordForm;

/// A person on record, to be changed in place: name, roles, credential, contact.
class PersonPanel final : public QWidget {
    Q_OBJECT

public:
    explicit PersonPanel(Session &session, QWidget *parent = nullptr);

    /// None is hidden.
    void show(Id<Person> person);
    void apply(const ChangeNotice &notice);
    /// Makes a person, and asks for the name.
    void startNew();

Q_SIGNALS:
    void made(lastrivet::RecordRef person);

private:
    void toggle(Role role, bool isOn);
    void fillRoles();

    Session &m_session;
    Id<Person> m_person;
    std::vector<QCheckBox *> m_roles;
    RecordForm *m_form;
};

} // namespace lastrivet::ui
