// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/EntryBar.h"

#include "core/entry/EntryLine.h"
#include "core/entry/TimerProgress.h"
#include "ui/convert/QtText.h"
#include "ui/daylog/EntryEdit.h"
#include "ui/daylog/Recording.h"
#include "ui/daylog/SignedQuestion.h"
#include "ui/daylog/TimerBar.h"
#include "ui/daylog/Understood.h"
#include "ui/shell/Session.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

EntryBar::EntryBar(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_line(new EntryEdit(session, this))
    , m_start(new QPushButton(tr("Start work"), this))
    , m_understood(new Understood(session, this))
    , m_question(new SignedQuestion(session, this))
    , m_timer(new TimerBar(session, this))
    , m_draft(session, "log_line", *m_line)
{
    build();
    m_draft.takeUp();
    updateTimer();
    understand();
}

EntryBar::~EntryBar()
{
    m_draft.keep();
}

void EntryBar::build()
{
    m_line->setPlaceholderText(tr("What was done, as in “2h15 left aileron: dimpled both skins”"));
    m_line->setAccessibleName(tr("New log entry"));
    m_line->setFont(m_session.theme().font(1));
    m_line->setEnabled(!m_session.isReadOnly());
    m_start->setEnabled(!m_session.isReadOnly());
    auto *line = new QHBoxLayout;
    line->addWidget(m_line, 1);
    line->addWidget(m_start);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    layout->addLayout(line);
    layout->addWidget(m_understood);
    layout->addWidget(m_question);
    layout->addWidget(m_timer);
    connect(m_line, &EntryEdit::entered, this, &EntryBar::enter);
    connect(m_line, &QLineEdit::textChanged, this, &EntryBar::understand);
    connect(m_start, &QPushButton::clicked, this, &EntryBar::start);
    connect(&m_session, &Session::timerChanged, this, &EntryBar::updateTimer);
    connect(m_timer, &TimerBar::recorded, this, &EntryBar::recorded);
    connect(m_timer, &TimerBar::left, this, &EntryBar::focusLine);
}

void EntryBar::hideEvent(QHideEvent *event)
{
    m_draft.keep();
    QWidget::hideEvent(event);
}

void EntryBar::focusLine()
{
    m_line->setFocus();
}

QWidget *EntryBar::firstFocus() const
{
    return m_line;
}

void EntryBar::recordsChanged()
{
    understand();
    m_start->setEnabled(!m_session.isReadOnly());
}

entry::EntryReading EntryBar::reading() const
{
    const auto records = m_session.records();
    return entry::readEntry(toStd(m_line->text()), *records, m_session.partFinder(),
                            m_session.now());
}

void EntryBar::understand()
{
    const auto read = reading();
    m_understood->show(read);
    if (read.sessions.empty())
        m_understood->say(
            tr("In front of the colon: how long, which day, parts joined by +, “with” a name. "
               "Behind it the note, and “done” with the steps to tick."));
    m_doubt.forget();
    IdSet<Component> parts;
    for (const WorkSession &session : read.sessions)
        parts.push_back(session.component_id);
    m_question->askAbout(parts);
}

bool EntryBar::mayBeLogged(const entry::EntryReading &reading)
{
    const auto objection = m_doubt.about(reading, m_line->text());
    if (!objection)
        return true;
    if (objection->is_overruled_by_saying_so)
        m_understood->say(tr("Enter once more logs it like this."));
    m_session.complain(tr("Not logged yet: %1").arg(objection->why));
    return false;
}

void EntryBar::enter()
{
    auto read = reading();
    if (read.sessions.empty()) {
        Q_EMIT leftForList();
        return;
    }
    if (!mayBeLogged(read))
        return;
    m_question->apply(read);
    const auto added = recordEntry(m_session, read);
    if (!added)
        return;
    // Undo is about the entry from here on, not about its words.
    m_line->setText({});
    m_draft.keep();
    Q_EMIT recorded(added->value());
}

/// Work begins on what the line names; its note goes with the clock.
void EntryBar::start()
{
    RunningTimer timer{m_session.now(), {}, {}, {}};
    TimerProgress progress = freshProgress(timer.began);
    const auto read = reading();
    if (!read.sessions.empty()) {
        timer.component_id = read.sessions.front().component_id;
        timer.step_id = read.sessions.front().step_id;
        timer.squawk_id = read.sessions.front().squawk_id;
        // Other parts, names and ticks are read again when work stops.
        const bool isMore = read.sessions.size() > 1 || !read.sessions.front().workers.empty() ||
                            !read.steps_done.empty();
        progress.note = isMore ? toStd(m_line->text()) : read.sessions.front().note;
    }
    if (m_session.setTimer(timer, progress)) {
        m_line->clear();
        m_draft.keep();
    }
    m_line->setFocus();
}

void EntryBar::updateTimer()
{
    m_start->setIcon(m_session.theme().icon(QStringLiteral("actions/timer_start")));
    m_start->setVisible(!m_session.timer().has_value());
}

} // namespace lastrivet::ui
