// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkEditor.h"

#include "core/project/acts/SquawkActs.h"
#include "ui/convert/QtText.h"
#include "ui/journal/HistoryButton.h"
#include "ui/shell/Session.h"
#include "ui/squawks/RepairOptions.h"
#include "ui/squawks/SquawkPictures.h"
#include "ui/squawks/SquawkReach.h"
#include "ui/squawks/SquawkStory.h"
#include "ui/squawks/SquawkWork.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/RecordForm.h"
#include "ui/widgets/RowMenu.h"
#include "ui/widgets/WithdrawAct.h"
#include "ui/widgets/WrappedText.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

using Act = SquawkActForm::Act;

namespace {

/// Begun like an act of the form, and none of them.
constexpr int withdrawal = -1;

std::vector<RecordForm::Row> formRows()
{
    return {{"title"},
            {"component_id"},
            {"severity"},
            {"found_on", false, SquawkEditor::tr("Found on")},
            {"found_by"},
            {"inspection_id"},
            {"finding_number"},
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
    , m_reach(new SquawkReach(session, this))
    , m_fixAndCheck(addAct(tr("Mark as fixed and checked"), Act::FixAndCheck))
    , m_fix(addAct(tr("Mark as fixed"), Act::Fix))
    , m_verify(addAct(tr("Verify"), Act::Verify))
    , m_accept(addAct(tr("Accept as it is"), Act::Accept))
    , m_again(addAct(tr("It came back…"), Act::FoundAgain))
    , m_takeBack(addAct(tr("Take back…"), Act::TakeBack))
    , m_withdraw(new QPushButton(tr("Withdraw"), this))
    , m_acts(new QWidget(this))
    , m_act(new SquawkActForm(session, this))
    , m_ask(new ActLine(session, this))
    , m_begun(session, {m_act, m_ask})
    , m_before(new SquawkPictures(session, loader, SquawkPictures::Side::Before, this))
    , m_after(new SquawkPictures(session, loader, SquawkPictures::Side::After, this))
    , m_form(new RecordForm(session, RecordType::Squawk, formRows(), this))
    , m_options(new RepairOptions(session, this))
    , m_work(new SquawkWork(session, this))
{
    build();
}

void SquawkEditor::build()
{
    m_heading->setFont(m_session.theme().font(1));
    m_heading->setWordWrap(true);
    m_story->setWordWrap(true);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 12, 16, 12);
    layout->setSpacing(8);
    for (QWidget *part :
         std::initializer_list<QWidget *>{m_heading, m_story, m_reach, buildActs(), m_act, m_ask})
        layout->addWidget(part);
    layout->addLayout(buildPictures());
    for (QWidget *part : std::initializer_list<QWidget *>{m_options, m_work, m_form})
        layout->addWidget(part);
    layout->addStretch(1);
    m_form->setCheck([this](const void *record) {
        const auto &changed = *static_cast<const Squawk *>(record);
        const auto why = acts::whyNotDated(changed, m_session.now());
        return why ? inWords(*why) : QString();
    });
    connect(m_ask, &ActLine::ended, this, &SquawkEditor::finished);
    connect(m_act, &ActForm::left, this, [this] {
        m_act->hide();
        Q_EMIT finished();
    });
    for (const Unfinished *form : std::initializer_list<const Unfinished *>{m_act, m_ask})
        connect(form, &Unfinished::wanted, this,
                [this] { Q_EMIT begunWanted(Id<Squawk>{m_begun.record()}); });
    connect(m_act, &SquawkActForm::foundAgain, this, [this](qint64 id) {
        m_session.goTo({RecordType::Squawk, id});
    });
}

QPushButton *SquawkEditor::addAct(const QString &words, Act act)
{
    auto *button = new QPushButton(words, this);
    connect(button, &QPushButton::clicked, this, [this, act] { start(act); });
    return button;
}

QWidget *SquawkEditor::buildActs()
{
    auto *flow = new Flow(m_acts);
    m_withdraw->setProperty("flat", true);
    m_takeBack->setProperty("flat", true);
    for (QPushButton *next : {m_fixAndCheck, m_verify})
        next->setProperty("primary", true);
    m_fixAndCheck->setToolTip(tr("F in the list"));
    for (QPushButton *next : {m_fixAndCheck, m_verify})
        RowMenu::tellKeys(*next, Qt::Key_F);
    m_takeBack->setToolTip(tr("One step back: not accepted, not verified or not fixed after all"));
    m_again->setToolTip(tr("Writes down a new squawk like this one; this one keeps its dates"));
    for (QPushButton *button :
         {m_fixAndCheck, m_fix, m_verify, m_accept, m_again, m_takeBack, m_withdraw})
        flow->addWidget(button);
    flow->addWidget(new HistoryButton(
        [this] {
            return RecordRef{RecordType::Squawk, m_squawk.value()};
        },
        m_acts));
    connect(m_withdraw, &QPushButton::clicked, this, &SquawkEditor::withdrawIt);
    return m_acts;
}

QLayout *SquawkEditor::buildPictures()
{
    auto *pictures = new QHBoxLayout;
    pictures->setSpacing(12);
    pictures->addWidget(m_before, 1);
    pictures->addWidget(m_after, 1);
    return pictures;
}

const Squawk *SquawkEditor::squawk() const
{
    return m_session.records()->findLive(m_squawk);
}

void SquawkEditor::show(Id<Squawk> squawk)
{
    if (squawk != m_squawk) {
        m_begun.show(squawk.value());
        m_squawk = squawk;
        m_before->show(squawk);
        m_after->show(squawk);
    }
    m_form->show(squawk.value());
    m_options->show(squawk);
    m_work->show(squawk);
    updateWords();
}

void SquawkEditor::showReach(const readiness::ListedSquawk *listed)
{
    m_reach->show(listed);
}

void SquawkEditor::apply(const ChangeNotice &notice)
{
    if (m_begun.record() != 0 && !notice.after->findLive(Id<Squawk>{m_begun.record()}))
        m_begun.drop();
    m_form->apply(notice);
    m_options->show(m_squawk);
    m_before->apply(notice);
    m_after->apply(notice);
    m_work->refresh();
    updateWords();
}

void SquawkEditor::updateWords()
{
    const Squawk *shown = squawk();
    setVisible(shown);
    if (!shown)
        return;
    m_heading->setText(breakable(tr("Squawk %1: %2").arg(toQt(shown->number), toQt(shown->title))));
    m_story->setText(squawkStory(*m_session.records(), *shown));
    updateActs(*shown);
}

bool SquawkEditor::isOwnToCheck(const Squawk &squawk) const
{
    return squawk.verify_by.value_or(SignerRole::Builder) == SignerRole::Builder;
}

void SquawkEditor::updateActs(const Squawk &squawk)
{
    const bool isOpen = acts::isOpen(squawk);
    m_fixAndCheck->setVisible(isOpen && isOwnToCheck(squawk) && !squawk.fixed_on);
    m_fix->setVisible(isOpen && !squawk.fixed_on);
    m_verify->setVisible(isOpen && squawk.fixed_on);
    m_accept->setVisible(isOpen);
    m_takeBack->setVisible(!isOpen || squawk.fixed_on);
    m_again->setVisible(!isOpen);
    for (QPushButton *button :
         {m_fixAndCheck, m_fix, m_verify, m_accept, m_takeBack, m_again, m_withdraw})
        button->setEnabled(!m_session.isReadOnly());
}

void SquawkEditor::editTitle()
{
    m_form->edit("title");
}

void SquawkEditor::fixAndCheck()
{
    const Squawk *shown = squawk();
    if (!shown || m_session.isReadOnly() || !acts::isOpen(*shown))
        return;
    if (shown->fixed_on)
        start(Act::Verify);
    else
        start(isOwnToCheck(*shown) ? Act::FixAndCheck : Act::Fix);
}

void SquawkEditor::start(Act act)
{
    if (!m_begun.mayStart(m_squawk.value(), {std::int64_t(act), m_squawk.value()}))
        return;
    if (m_ask->isVisible())
        m_ask->leave();
    m_act->start(act, m_squawk);
}

void SquawkEditor::withdrawIt()
{
    if (!squawk() || !m_begun.mayStart(m_squawk.value(), {withdrawal, m_squawk.value()}))
        return;
    m_act->hide();
    askToWithdraw(m_session, *m_ask, {RecordType::Squawk, m_squawk.value()});
}

} // namespace lastrivet::ui
