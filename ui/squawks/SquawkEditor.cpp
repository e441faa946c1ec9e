// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkEditor.h"

#include "core/project/acts/SquawkActs.h"
#include "core/project/acts/Withdrawal.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/squawks/RepairOptions.h"
#include "ui/squawks/SquawkModel.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/PhotoStrip.h"
#include "ui/widgets/RecordForm.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/WithdrawAct.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

namespace {

std::vector<RecordForm::Row> formRows()
{
    return {{"title"},
            {"component_id"},
            {"severity"},
            {"found_on", false, SquawkEditor::tr("Found on")},
            {"found_by"},
            {"detail", true},
            {"needs_access_to", false, SquawkEditor::tr("Reached through")},
            {"verify_by"},
            {"estimate_minutes", false, SquawkEditor::tr("Estimate")},
            {"repair_plan", true},
            {"correction", true},
            {"source"},
            {"note", true}};
}

} // namespace

SquawkEditor::SquawkEditor(Session &session, PictureLoader &loader, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_heading(new QLabel(this))
    , m_story(new QLabel(this))
    , m_ask(new ActLine(session, this))
    , m_form(new RecordForm(session, RecordType::Squawk, formRows(), this))
    , m_options(new RepairOptions(session, this))
    , m_photos(new PhotoStrip(session, loader, this))
{
    build(loader);
}

void SquawkEditor::build(PictureLoader &)
{
    m_heading->setFont(m_session.theme().font(1));
    m_heading->setWordWrap(true);
    m_story->setWordWrap(true);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 12);
    layout->setSpacing(8);
    layout->addWidget(m_heading);
    layout->addWidget(m_story);
    buildActs();
    layout->addWidget(m_ask);
    layout->addWidget(m_photos);
    layout->addWidget(m_form);
    auto *ways = new QLabel(tr("Ways to repair it"), this);
    layout->addWidget(ways);
    layout->addWidget(m_options);
    layout->addStretch(1);
    connect(m_ask, &ActLine::ended, this, &SquawkEditor::finished);
}

QPushButton *SquawkEditor::addAct(const QString &words, const QString &key,
                                  void (SquawkEditor::*act)())
{
    auto *button = new QPushButton(words, this);
    if (!key.isEmpty())
        button->setToolTip(key);
    connect(button, &QPushButton::clicked, this, act);
    return button;
}

void SquawkEditor::buildActs()
{
    auto *acts = new QWidget(this);
    auto *flow = new Flow(acts);
    m_fixAndCheck = addAct(tr("Fixed and checked"), tr("F"), &SquawkEditor::fixAndCheck);
    m_fix = addAct(tr("Fixed"), {}, &SquawkEditor::fix);
    m_verify = addAct(tr("Verify"), {}, &SquawkEditor::verify);
    m_accept = addAct(tr("Accept as it is"), {}, &SquawkEditor::accept);
    m_reopen = addAct(tr("Open again"), {}, &SquawkEditor::reopen);
    auto *withdrawal = addAct(tr("Withdraw"), {}, &SquawkEditor::withdrawIt);
    withdrawal->setProperty("flat", true);
    m_fixAndCheck->setProperty("primary", true);
    for (QPushButton *button :
         {m_fixAndCheck, m_fix, m_verify, m_accept, m_reopen, withdrawal})
        flow->addWidget(button);
    layout()->addWidget(acts);
}

const Squawk *SquawkEditor::squawk() const
{
    return m_session.records()->findLive(m_squawk);
}

void SquawkEditor::show(Id<Squawk> squawk)
{
    if (squawk != m_squawk && m_ask->isVisible())
        m_ask->leave();
    m_squawk = squawk;
    m_form->show(squawk.value());
    m_options->show(squawk);
    m_photos->show({{RecordType::Squawk, squawk.value()}});
    updateWords();
}

void SquawkEditor::apply(const ChangeNotice &notice)
{
    m_form->apply(notice);
    m_options->show(m_squawk);
    m_photos->apply(notice);
    updateWords();
}

QString SquawkEditor::story(const Squawk &squawk) const
{
    const auto records = m_session.records();
    QStringList lines;
    if (squawk.fixed_on)
        lines.append(tr("Fixed %1 by %2: %3")
                         .arg(dateText(*squawk.fixed_on), personName(*records, squawk.fixed_by),
                              toQt(squawk.correction)));
    if (squawk.verified_on)
        lines.append(tr("Verified %1 by %2")
                         .arg(dateText(*squawk.verified_on),
                              personName(*records, squawk.verified_by)));
    if (squawk.accepted_on)
        lines.append(tr("Accepted as it is %1 by %2: %3")
                         .arg(dateText(*squawk.accepted_on),
                              personName(*records, squawk.accepted_by),
                              toQt(squawk.accepted_basis)));
    if (acts::isOpen(squawk))
        lines.prepend(squawkState(squawk));
    return lines.join(QLatin1Char('\n'));
}

void SquawkEditor::updateWords()
{
    const Squawk *shown = squawk();
    setVisible(shown);
    if (!shown)
        return;
    m_heading->setText(tr("Squawk %1: %2").arg(toQt(shown->number), toQt(shown->title)));
    m_story->setText(story(*shown));
    const bool open = acts::isOpen(*shown);
    const bool isOwn = shown->verify_by.value_or(SignerRole::Builder) == SignerRole::Builder;
    m_fixAndCheck->setVisible(open && isOwn && !shown->fixed_on);
    m_fix->setVisible(open && !shown->fixed_on);
    m_verify->setVisible(open && shown->fixed_on);
    m_accept->setVisible(open);
    m_reopen->setVisible(!open || shown->fixed_on);
    for (QPushButton *button : findChildren<QPushButton *>())
        button->setEnabled(!m_session.isReadOnly());
}

void SquawkEditor::editTitle()
{
    m_form->edit("title");
}

bool SquawkEditor::recordFix(const QString &correction, Moment on, Id<Person> by, bool isChecked)
{
    const Id<Squawk> id = m_squawk;
    const QString number = toQt(squawk()->number);
    return m_session.change(
        isChecked ? tr("Squawk %1 fixed and checked").arg(number)
                  : tr("Squawk %1 fixed").arg(number),
        [&](Edit &edit) {
            acts::fixSquawk(edit, id, toStd(correction), on, by);
            if (isChecked)
                acts::verifySquawk(edit, id, on, by);
        });
}

void SquawkEditor::fixAndCheck()
{
    const Squawk *shown = squawk();
    if (!shown || !m_fixAndCheck->isVisibleTo(this))
        return;
    m_ask->ask({.words = tr("What was done about it?"),
                .confirm = tr("Fixed and checked"),
                .textLabel = tr("Correction"),
                .text = toQt(shown->correction),
                .dayLabel = tr("On"),
                .personLabel = tr("By"),
                .person = m_session.records()->project.builder_id,
                .textMissing = tr("A correction needs to be written down.")},
               [this](const ActLine::Answer &answer) {
                   return recordFix(answer.text, *answer.day, answer.person, true);
               });
}

void SquawkEditor::fix()
{
    const Squawk *shown = squawk();
    if (!shown)
        return;
    m_ask->ask({.words = tr("What was done about it?"),
                .confirm = tr("Fixed"),
                .textLabel = tr("Correction"),
                .text = toQt(shown->correction),
                .dayLabel = tr("On"),
                .personLabel = tr("By"),
                .person = m_session.records()->project.builder_id,
                .textMissing = tr("A correction needs to be written down.")},
               [this](const ActLine::Answer &answer) {
                   return recordFix(answer.text, *answer.day, answer.person, false);
               });
}

void SquawkEditor::verify()
{
    const Squawk *shown = squawk();
    if (!shown)
        return;
    const bool isOwn = shown->verify_by.value_or(SignerRole::Builder) == SignerRole::Builder;
    m_ask->ask({.words = tr("Who looked at the correction?"),
                .confirm = tr("Verified"),
                .dayLabel = tr("On"),
                .personLabel = tr("By"),
                .person = isOwn ? m_session.records()->project.builder_id : Id<Person>{}},
               [this](const ActLine::Answer &answer) {
                   const auto records = m_session.records();
                   const Squawk &fixed = *records->find(m_squawk);
                   if (const auto why = acts::whyNotVerify(fixed, *records->find(answer.person))) {
                       m_session.complain(inWords(*why));
                       return false;
                   }
                   return m_session.change(
                       tr("Squawk %1 verified").arg(toQt(fixed.number)), [&](Edit &edit) {
                           acts::verifySquawk(edit, m_squawk, *answer.day, answer.person);
                       });
               });
}

void SquawkEditor::accept()
{
    if (!squawk())
        return;
    m_ask->ask({.words = tr("Who accepts it as it is, and on what basis?"),
                .confirm = tr("Accepted"),
                .textLabel = tr("Basis"),
                .dayLabel = tr("On"),
                .personLabel = tr("By"),
                .textMissing = tr("An acceptance needs its basis: a letter, a drawing, a rule.")},
               [this](const ActLine::Answer &answer) {
                   const auto records = m_session.records();
                   const Squawk &open = *records->find(m_squawk);
                   if (const auto why = acts::whyNotAccept(open, *records->find(answer.person))) {
                       m_session.complain(inWords(*why));
                       return false;
                   }
                   return m_session.change(
                       tr("Squawk %1 accepted").arg(toQt(open.number)), [&](Edit &edit) {
                           acts::acceptSquawk(edit, m_squawk, *answer.day, answer.person,
                                        toStd(answer.text));
                       });
               });
}

void SquawkEditor::reopen()
{
    if (!squawk())
        return;
    m_session.change(tr("Squawk %1 open again").arg(toQt(squawk()->number)),
                     [&](Edit &edit) { acts::reopenSquawk(edit, m_squawk); });
    Q_EMIT finished();
}

void SquawkEditor::withdrawIt()
{
    if (squawk())
        askToWithdraw(m_session, *m_ask, {RecordType::Squawk, m_squawk.value()});
}

} // namespace lastrivet::ui
