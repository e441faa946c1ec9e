// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkActForm.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/squawks/SquawkPeople.h"
#include "ui/widgets/MomentLine.h"
#include "ui/widgets/PersonBox.h"

#include <QLineEdit>

#include <algorithm>

namespace lastrivet::ui {

namespace {

using Act = SquawkActForm::Act;

struct ActWords {
    QString title;
    QString confirm;
};

ActWords wordsFor(Act act, const QString &number)
{
    switch (act) {
    case Act::Fix:
        return {SquawkActForm::tr("Squawk %1: what was done about it?").arg(number),
                SquawkActForm::tr("Mark as fixed")};
    case Act::FixAndCheck:
        return {SquawkActForm::tr("Squawk %1: what was done about it?").arg(number),
                SquawkActForm::tr("Mark as fixed and checked")};
    case Act::Verify:
        return {SquawkActForm::tr("Squawk %1: who looked at the correction?").arg(number),
                SquawkActForm::tr("Mark as verified")};
    case Act::Accept:
        return {SquawkActForm::tr("Squawk %1 stays as it is: who accepts that, and on what basis?")
                    .arg(number),
                SquawkActForm::tr("Mark as accepted")};
    case Act::TakeBack:
        return {SquawkActForm::tr("Squawk %1: why is the last step taken back?").arg(number),
                SquawkActForm::tr("Take it back")};
    case Act::FoundAgain:
        break;
    }
    return {SquawkActForm::tr("Squawk %1 has come back: what is seen now?").arg(number),
            SquawkActForm::tr("Write down a new squawk")};
}

} // namespace

SquawkActForm::SquawkActForm(Session &session, QWidget *parent)
    : ActForm(tr("Mark as fixed"), parent)
    , m_session(session)
    , m_correction(new QLineEdit(this))
    , m_basis(new QLineEdit(this))
    , m_why(new QLineEdit(this))
    , m_day(new MomentLine(session, this))
    , m_person(new PersonBox(this))
    , m_worked(new QLineEdit(this))
{
    addLine(tr("Correction"), m_correction);
    addLine(tr("Basis"), m_basis);
    m_basis->setPlaceholderText(tr("a letter, a drawing, a rule"));
    addLine(tr("Why"), m_why);
    addLine(tr("On"), m_day);
    addField(tr("By"), m_person);
    connect(m_person->lineEdit(), &QLineEdit::returnPressed, this, [this] { tryToPerform(); });
    addLine(tr("Worked for"), m_worked);
    m_worked->setPlaceholderText(tr("optional, as 2h15 or 90m; goes into the log"));
    setLeavable(true);
    hide();
}

void SquawkActForm::addLine(const QString &label, QLineEdit *line)
{
    addField(label, line);
    connect(line, &QLineEdit::returnPressed, this, [this] { tryToPerform(); });
}

bool SquawkActForm::isAbout(std::initializer_list<Act> acts) const
{
    return std::ranges::find(acts, m_act) != acts.end();
}

QLineEdit &SquawkActForm::firstLine() const
{
    if (isAbout({Act::Fix, Act::FixAndCheck}))
        return *m_correction;
    return isAbout({Act::Accept}) ? *m_basis : *m_why;
}

void SquawkActForm::start(Act act, Id<Squawk> squawk)
{
    const Squawk *known = m_session.records()->findLive(squawk);
    if (!known)
        return;
    const bool isSame = act == m_act && squawk == m_squawk;
    m_act = act;
    m_squawk = squawk;
    const auto words = wordsFor(act, toQt(known->number));
    setTitle(words.title);
    setDoWords(words.confirm);
    hint({});
    showFields();
    if (!isSame)
        fill(*known);
    const QString named = isSame ? m_person->currentText() : QString();
    offerPeople(*known);
    if (!named.isEmpty())
        m_person->setEditText(named);
    show();
    if (isSame)
        goOn();
    else
        noteFields();
    if (act == Act::Verify) {
        m_person->setFocus();
        m_person->lineEdit()->selectAll();
    } else {
        firstLine().setFocus();
    }
}

void SquawkActForm::showFields()
{
    const bool isFix = isAbout({Act::Fix, Act::FixAndCheck});
    setFieldVisible(m_correction, isFix);
    setFieldVisible(m_worked, isFix);
    setFieldVisible(m_basis, m_act == Act::Accept);
    setFieldVisible(m_why, isAbout({Act::TakeBack, Act::FoundAgain}));
    setFieldVisible(m_day, isFix || isAbout({Act::Verify, Act::Accept}));
    setFieldVisible(m_person, isFix || isAbout({Act::Verify, Act::Accept}));
}

void SquawkActForm::fill(const Squawk &squawk)
{
    m_correction->setText(toQt(squawk.correction));
    // Undo is about what is on record from here on, not about the words of an earlier form.
    for (QLineEdit *line : {m_basis, m_why, m_worked})
        line->setText({});
    m_day->setMoment(m_session.today());
}

void SquawkActForm::offerPeople(const Squawk &squawk)
{
    const auto records = m_session.records();
    const auto builder = records->project.builder_id;
    const auto needed = squawk.verify_by.value_or(SignerRole::Builder);
    if (m_act == Act::Verify)
        m_person->offer(*records, needed, needed == SignerRole::Builder ? builder : Id<Person>{});
    else if (m_act == Act::FixAndCheck)
        m_person->offer(*records, SignerRole::Builder, builder);
    else if (m_act == Act::Accept)
        m_person->offer(
            *records, [squawk](const Records &those) { return peopleWhoMayAccept(those, squawk); },
            Role::Designer);
    else
        m_person->offer(*records, everybody, Role::Helper, builder);
}

} // namespace lastrivet::ui
