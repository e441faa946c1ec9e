// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkActForm.h"

#include "core/entry/DurationText.h"
#include "core/project/acts/Sessions.h"
#include "core/project/acts/SquawkActs.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/squawks/SquawkPeople.h"
#include "ui/widgets/MomentLine.h"
#include "ui/widgets/PersonBox.h"

#include <QLineEdit>

// What becomes of the answers: what is wrong with them, and the change they make.
namespace lastrivet::ui {

QString SquawkActForm::wrongText() const
{
    if (!firstLine().text().trimmed().isEmpty() || m_act == Act::Verify)
        return {};
    if (isAbout({Act::Fix, Act::FixAndCheck}))
        return tr("A correction needs to be written down.");
    if (m_act == Act::Accept)
        return tr("An acceptance needs its basis: a letter, a drawing, a rule.");
    return m_act == Act::TakeBack ? tr("Say why, so that the record still makes sense in a year.")
                                  : tr("Say in a few words what is wrong.");
}

QString SquawkActForm::wrongDay(const Squawk &squawk) const
{
    if (isAbout({Act::TakeBack, Act::FoundAgain}))
        return {};
    const auto day = m_day->moment();
    if (!day)
        return m_day->isWrong() ? tr("“%1” is no day.").arg(m_day->text()) : tr("On which day?");
    const auto why = m_act == Act::Verify ? acts::whyNotVerifiedOn(squawk, *day, m_session.now())
                                          : acts::whyNotOn(squawk, *day, m_session.now());
    return why ? inWords(*why) : QString();
}

/// A name that is typed may be that of somebody who is on record and may not do this: nobody gets
/// another role by being typed here.
QString SquawkActForm::wrongPerson(const Squawk &squawk) const
{
    if (isAbout({Act::TakeBack, Act::FoundAgain}))
        return {};
    if (!m_person->isFilled())
        return tr("Somebody has to be named.");
    const Person *known = personNamed(*m_session.records(), m_person->currentText());
    if (!known)
        return m_act == Act::Accept
                   ? tr("“%1” is not among the people on record; add the name there first, with "
                        "the role.")
                         .arg(m_person->currentText().trimmed())
                   : QString();
    std::optional<Message> why;
    if (isAbout({Act::Verify, Act::FixAndCheck}))
        why = acts::whyNotVerify(squawk, *known);
    if (m_act == Act::Accept)
        why = acts::whyNotAccept(squawk, *known);
    return why ? inWords(*why) : QString();
}

QString SquawkActForm::wrongIn(const Squawk &squawk)
{
    for (const QString &wrong : {wrongText(), wrongDay(squawk), wrongPerson(squawk)}) {
        if (!wrong.isEmpty())
            return wrong;
    }
    const bool isFix = isAbout({Act::Fix, Act::FixAndCheck});
    if (isFix && !m_worked->text().trimmed().isEmpty() && !worked())
        return tr("“%1” is no length of time; write it as 2h15 or 90m.").arg(m_worked->text());
    return {};
}

std::optional<Minutes> SquawkActForm::worked() const
{
    return entry::parseDuration(toStd(m_worked->text()));
}

bool SquawkActForm::perform()
{
    const auto records = m_session.records();
    const Squawk *squawk = records->findLive(m_squawk);
    if (!squawk)
        return true;
    const QString wrong = wrongIn(*squawk);
    hint(wrong);
    if (!wrong.isEmpty())
        return false;
    const bool isDone = carryOut(*squawk);
    if (isDone)
        m_squawk = {};
    return isDone;
}

bool SquawkActForm::carryOut(const Squawk &squawk)
{
    switch (m_act) {
    case Act::Fix:
    case Act::FixAndCheck:
        return fix(squawk);
    case Act::Verify:
        return verify(squawk);
    case Act::Accept:
        return accept(squawk);
    case Act::TakeBack:
        return takeBack(squawk);
    case Act::FoundAgain:
        break;
    }
    return findAgain(squawk);
}

bool SquawkActForm::fix(const Squawk &squawk)
{
    const bool isChecked = m_act == Act::FixAndCheck;
    const QString number = toQt(squawk.number);
    const Moment on = *m_day->moment();
    return m_session.change(isChecked ? tr("Squawk %1 fixed and checked").arg(number)
                                      : tr("Squawk %1 fixed").arg(number),
                            [&](Edit &edit) {
                                const auto by = m_person->personIn(edit);
                                acts::fixSquawk(edit, squawk.id, toStd(m_correction->text()), on,
                                                by);
                                if (isChecked)
                                    acts::verifySquawk(edit, squawk.id, on, by);
                                logWork(edit, squawk, by);
                            });
}

void SquawkActForm::logWork(Edit &edit, const Squawk &squawk, Id<Person> person) const
{
    const auto minutes = worked();
    if (!minutes)
        return;
    WorkSession session;
    session.began = m_day->moment();
    session.minutes = minutes;
    session.squawk_id = squawk.id;
    session.kind = WorkKind::Rework;
    session.workers.push_back({person, {}, false});
    session.note = toStd(m_correction->text());
    acts::enterSession(edit, std::move(session));
}

bool SquawkActForm::verify(const Squawk &squawk)
{
    return m_session.change(tr("Squawk %1 verified").arg(toQt(squawk.number)), [&](Edit &edit) {
        acts::verifySquawk(edit, squawk.id, *m_day->moment(), m_person->personIn(edit));
    });
}

bool SquawkActForm::accept(const Squawk &squawk)
{
    return m_session.change(tr("Squawk %1 accepted").arg(toQt(squawk.number)), [&](Edit &edit) {
        acts::acceptSquawk(edit, squawk.id, *m_day->moment(), m_person->personIn(edit),
                           toStd(m_basis->text()));
    });
}

bool SquawkActForm::takeBack(const Squawk &squawk)
{
    const QString why = m_why->text().trimmed();
    const QString day = toQt(m_session.today().text());
    const QString remark = squawk.accepted_on ? tr("%1: acceptance taken back: %2").arg(day, why)
                           : squawk.verified_on
                               ? tr("%1: verification taken back: %2").arg(day, why)
                               : tr("%1: not fixed after all: %2").arg(day, why);
    return m_session.change(tr("Squawk %1: one step back").arg(toQt(squawk.number)),
                            [&](Edit &edit) { acts::takeBack(edit, squawk.id, toStd(remark)); });
}

bool SquawkActForm::findAgain(const Squawk &squawk)
{
    const QString number = toQt(squawk.number);
    const QString remark =
        tr("As squawk %1, which was dealt with before. %2").arg(number, m_why->text().trimmed());
    Id<Squawk> added;
    const bool isDone =
        m_session.change(tr("Squawk %1 has come back").arg(number), [&](Edit &edit) {
            added = acts::foundAgain(edit, squawk.id, toStd(remark));
        });
    if (isDone)
        Q_EMIT foundAgain(added.value());
    return isDone;
}

} // namespace lastrivet::ui
