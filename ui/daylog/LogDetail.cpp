// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/LogDetail.h"

#include "ui/convert/QtText.h"
#include "ui/daylog/EntryPictures.h"
#include "ui/daylog/LogActs.h"
#include "ui/daylog/WorkersEditor.h"
#include "ui/journal/HistoryButton.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/Flow.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RecordForm.h"
#include "ui/widgets/RowMenu.h"
#include "ui/widgets/WithdrawAct.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

namespace {

std::vector<RecordForm::Row> formRows()
{
    return {{"began"},
            {"minutes", false, LogDetail::tr("Duration")},
            {"component_id"},
            {"note", true, LogDetail::tr("What was done")},
            {"kind"},
            {"step_id"},
            {"squawk_id"},
            {"changed_inspected", false, LogDetail::tr("Changed what was inspected")},
            {"approximate", false, LogDetail::tr("The day is only about right")},
            {"place"},
            {"source"}};
}

} // namespace

LogDetail::LogDetail(Session &session, PictureLoader &loader, QWidget *parent)
    : QScrollArea(parent)
    , m_session(session)
    , m_ask(new ActLine(session, this))
    , m_several(new QLabel(this))
    , m_form(new RecordForm(session, RecordType::WorkSession, formRows(), this))
    , m_who(new QLabel(tr("Who worked"), this))
    , m_workers(new WorkersEditor(session, this))
    , m_photos(new EntryPictures(session, loader, this))
    , m_acts(new QWidget(this))
    , m_split(flatButton(tr("Split this entry…"), this))
    , m_move(flatButton({}, this))
    , m_withdraw(flatButton({}, this))
    , m_history(new HistoryButton(
          [this] {
              return RecordRef{RecordType::WorkSession, m_entries.front().value()};
          },
          this))
{
    build();
}

void LogDetail::build()
{
    auto *inside = new QWidget(this);
    auto *layout = new QVBoxLayout(inside);
    layout->setContentsMargins(16, 0, 8, 8);
    layout->setSpacing(8);
    layout->addWidget(m_ask);
    layout->addWidget(m_several);
    layout->addWidget(m_form);
    layout->addWidget(m_who);
    layout->addWidget(m_workers);
    layout->addWidget(m_photos);
    auto *flow = new Flow(m_acts);
    for (QPushButton *button : {m_split, m_move, m_withdraw})
        flow->addWidget(button);
    flow->addWidget(m_history);
    layout->addWidget(m_acts);
    RowMenu::tellKeys(*m_split, Qt::Key_S);
    RowMenu::tellKeys(*m_move, Qt::Key_M);
    RowMenu::tellKeys(*m_withdraw, QKeySequence::Delete);
    layout->addStretch(1);
    m_several->setWordWrap(true);
    setWidgetResizable(true);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setWidget(inside);
    connect(m_split, &QPushButton::clicked, this, &LogDetail::split);
    connect(m_move, &QPushButton::clicked, this, &LogDetail::moveElsewhere);
    connect(m_withdraw, &QPushButton::clicked, this, &LogDetail::withdraw);
    connect(m_ask, &ActLine::ended, this, &LogDetail::ended);
    connect(m_ask, &ActLine::wanted, this, [this] {
        const auto entries = m_ask->about();
        Q_EMIT begunWanted(entries);
    });
}

void LogDetail::show(const std::vector<Id<WorkSession>> &entries)
{
    m_entries = entries;
    // What was asked about others is not answered for these.
    m_ask->follow(shown());
    const bool isOne = entries.size() == 1;
    const auto id = isOne ? entries.front() : Id<WorkSession>{};
    widget()->setVisible(!entries.empty());
    m_form->setVisible(isOne);
    m_who->setVisible(isOne);
    m_workers->setVisible(isOne);
    m_form->show(id.value());
    m_workers->show(id);
    m_photos->show(id);
    m_photos->setVisible(isOne);
    m_several->setVisible(entries.size() > 1);
    showSeveral();
    m_split->setVisible(isOne);
    m_history->setVisible(isOne);
    m_move->setText(isOne ? tr("Move this entry…") : tr("Move them…"));
    m_withdraw->setText(isOne ? tr("Withdraw this entry") : tr("Withdraw them"));
    for (QPushButton *button : {m_split, m_move, m_withdraw})
        button->setEnabled(!m_session.isReadOnly());
}

std::vector<RecordRef> LogDetail::shown() const
{
    std::vector<RecordRef> records;
    for (const auto id : m_entries)
        records.push_back({RecordType::WorkSession, id.value()});
    return records;
}

void LogDetail::showSeveral()
{
    Minutes sum;
    for (const auto id : m_entries) {
        const WorkSession *entry = m_session.records()->find(id);
        sum += entry ? entry->minutes.value_or(Minutes{}) : Minutes{};
    }
    m_several->setText(tr("%n entries are chosen, %1 in all.", nullptr, int(m_entries.size()))
                           .arg(hoursText(sum)));
}

void LogDetail::apply(const ChangeNotice &notice)
{
    m_form->apply(notice);
    m_photos->apply(notice);
}

void LogDetail::edit()
{
    m_form->edit("note");
}

// The keys of the list lead to these three too, also while nothing may be changed.

void LogDetail::withdraw()
{
    if (!m_entries.empty() && m_session.mayChange())
        askToWithdraw(m_session, *m_ask, shown());
}

void LogDetail::split()
{
    if (m_entries.size() == 1 && m_session.mayChange())
        askToSplit(m_session, *m_ask, m_entries.front());
}

void LogDetail::moveElsewhere()
{
    if (!m_entries.empty() && m_session.mayChange())
        askToMove(m_session, *m_ask, m_entries);
}

} // namespace lastrivet::ui
