// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Minutes.h"
#include "core/base/Moment.h"
#include "core/project/Edit.h"
#include "ui/widgets/ActForm.h"

#include <optional>

class QLineEdit;

namespace lastrivet::ui {

class MomentLine;
class PersonBox;
class Session;

/// What ends a squawk, asked in place: the correction, who looked at it, on what basis it may stay;
/// and the way back. What is wrong with an answer is said below it.
class SquawkActForm final : public ActForm {
    Q_OBJECT

public:
    enum class Act { Fix, FixAndCheck, Verify, Accept, TakeBack, FoundAgain };

    explicit SquawkActForm(Session &session, QWidget *parent = nullptr);

    /// Asks for an act; what was typed for the same one before is still there.
    void start(Act act, Id<Squawk> squawk);
    Act act() const { return m_act; }

Q_SIGNALS:
    void foundAgain(qint64 squawk);

protected:
    bool perform() override;

private:
    void addLine(const QString &label, QLineEdit *line);
    void fill(const Squawk &squawk);
    void showFields();
    void offerPeople(const Squawk &squawk);
    QLineEdit &firstLine() const;
    bool isAbout(std::initializer_list<Act> acts) const;

    /// What is wrong with the answers; empty when nothing is.
    QString wrongIn(const Squawk &squawk);
    QString wrongText() const;
    QString wrongDay(const Squawk &squawk) const;
    QString wrongPerson(const Squawk &squawk) const;
    bool carryOut(const Squawk &squawk);
    bool fix(const Squawk &squawk);
    bool verify(const Squawk &squawk);
    bool accept(const Squawk &squawk);
    bool takeBack(const Squawk &squawk);
    bool findAgain(const Squawk &squawk);
    void logWork(Edit &edit, const Squawk &squawk, Id<Person> person) const;
    std::optional<Minutes> worked() const;

    Session &m_session;
    Act m_act = Act::Fix;
    Id<Squawk> m_squawk;
    QLineEdit *m_correction;
    QLineEdit *m_basis;
    QLineEdit *m_why;
    MomentLine *m_day;
    PersonBox *m_person;
    QLineEdit *m_worked;
};

} // namespace lastrivet::ui
