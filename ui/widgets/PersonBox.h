// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <QComboBox>
#include <QStringList>

#include <functional>
#include <vector>

namespace lastrivet::ui {

/// A choice among the people who may sign in a role; a name that is not in it yet becomes a person
/// with that role.
class PersonBox final : public QComboBox {
    Q_OBJECT

public:
    explicit PersonBox(QWidget *parent = nullptr);

    /// Who may be chosen, of the records at hand.
    using People = std::function<std::vector<const Person *>(const Records &)>;

    /// Offers the people of the role or above it; `preferred` is chosen when it is among them.
    void offer(const Records &records, SignerRole role, Id<Person> preferred = {});
    /// Offers these people; a new name becomes a person with `roleOfNew`.
    void offer(const Records &records, const People &people, Role roleOfNew,
               Id<Person> preferred = {});
    /// True when somebody is chosen or a name is typed.
    bool isFilled() const;
    /// The person in the records, or none for a name that is new.
    Id<Person> person() const;
    /// That the name typed becomes a person; empty when it does not.
    QString newcomerWords() const;
    /// One sentence why the typed name cannot be taken: nobody, or somebody on record without the
    /// role. Empty when it can.
    QString whyNot(const Records &records) const;
    /// The person, made in this change when the name is new.
    Id<Person> personIn(Edit &edit) const;

Q_SIGNALS:
    /// Another name stands in it, by whomever.
    void named();

private:
    /// Somebody of this name who may be chosen by now, and could not when they were offered.
    Id<Person> cameSince(const Records &records) const;

    People m_people;
    /// The names of all who were on record when they were offered.
    QStringList m_known;
    Role m_role = Role::Builder;
};

} // namespace lastrivet::ui
