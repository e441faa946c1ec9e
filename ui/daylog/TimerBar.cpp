// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/TimerBar.h"

#include "ui/convert/QtText.h"
#include "ui/daylog/StopForm.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RecordNames.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

namespace {

constexpr int tickMilliseconds = 15000;

} // namespace

TimerBar::TimerBar(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_words(new QLabel(this))
    , m_note(new QLineEdit(this))
    , m_leaveOut(new QPushButton(tr("Leave that time out"), this))
    , m_pause(new QPushButton(this))
    , m_stop(new QPushButton(tr("Stop work"), this))
    , m_form(new StopForm(session, this))
{
    build();
    tick();
    showTimer();
}

void TimerBar::build()
{
    m_words->setWordWrap(true);
    m_note->setPlaceholderText(tr("Note while at work"));
    m_note->setAccessibleName(tr("Note while at work"));
    m_leaveOut->setProperty("flat", true);
    auto *line = new QHBoxLayout;
    line->addWidget(m_words, 2);
    line->addWidget(m_leaveOut);
    line->addWidget(m_note, 1);
    line->addWidget(m_pause);
    line->addWidget(m_stop);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(line);
    layout->addWidget(m_form);
    for (QPushButton *button : {m_leaveOut, m_pause, m_stop})
        button->setEnabled(!m_session.isReadOnly());
    m_note->setReadOnly(m_session.isReadOnly());
    connect(m_stop, &QPushButton::clicked, this, &TimerBar::stop);
    connect(m_pause, &QPushButton::clicked, this, &TimerBar::pauseOrResume);
    connect(m_leaveOut, &QPushButton::clicked, this, [this] { change(leaveGapsOut); });
    connect(m_note, &QLineEdit::editingFinished, this, &TimerBar::noteDown);
    connect(m_note, &QLineEdit::textEdited, &m_soon, qOverload<>(&QTimer::start));
    connect(&m_soon, &QTimer::timeout, this, &TimerBar::noteDown);
    connect(m_form, &StopForm::recorded, this, &TimerBar::recorded);
    connect(m_form, &StopForm::left, this, [this] {
        m_form->hide();
        Q_EMIT left();
    });
    connect(&m_session, &Session::timerChanged, this, &TimerBar::showTimer);
    connect(&m_tick, &QTimer::timeout, this, &TimerBar::tick);
}

bool TimerBar::change(const std::function<void(TimerProgress &)> &body)
{
    const auto timer = m_session.timer();
    if (!timer || m_session.isReadOnly())
        return false;
    auto progress = m_session.timerProgress();
    body(progress);
    return m_session.setTimerProgress(progress);
}

void TimerBar::noteDown()
{
    if (!m_note->isModified())
        return;
    if (change(
            [this](TimerProgress &progress) { progress.note = toStd(m_note->text().trimmed()); }))
        m_note->setModified(false);
}

void TimerBar::pauseOrResume()
{
    change([this](TimerProgress &progress) {
        if (progress.is_paused)
            resume(progress, m_session.now());
        else
            pause(progress, m_session.now());
    });
}

/// Looks at the clock now and then; it is written down once a minute, and a jump of it is noticed.
void TimerBar::tick()
{
    const auto timer = m_session.timer();
    if (!timer || m_session.isReadOnly())
        return;
    const TimerProgress before = m_session.timerProgress();
    TimerProgress progress = before;
    look(progress, m_session.now());
    if (progress == before)
        m_words->setText(wordsFor(*timer, progress));
    else
        change([&](TimerProgress &kept) { kept = progress; });
}

void TimerBar::stop()
{
    // What is typed already stays as it is.
    if (!m_form->isHidden()) {
        m_form->goOn();
        return;
    }
    tick();
    noteDown();
    m_form->ask();
}

void TimerBar::setAway(bool isAway)
{
    m_isAway = isAway;
    showTimer();
}

QString TimerBar::wordsFor(const RunningTimer &timer, const TimerProgress &progress) const
{
    const Minutes worked = workedBy(progress, m_session.now());
    const QString ran = hoursText(worked);
    const QString part = partName(*m_session.records(), timer.component_id);
    const QString since = dateText(timer.began);
    if (progress.is_paused)
        return part.isEmpty() ? tr("Paused after %1 of work").arg(ran)
                              : tr("Paused after %1 of work on %2").arg(ran, part);
    if (progress.gap_began)
        return tr("At work since %1: %2. Of it the computer slept, or the program was closed, for "
                  "%3.")
            .arg(since, ran, hoursText(progress.gaps));
    if (worked > longestUnasked)
        return tr("The clock has run for %1, since %2. When did work stop?").arg(ran, since);
    return part.isEmpty() ? tr("At work since %1: %2").arg(since, ran)
                          : tr("At work on %1 since %2: %3").arg(part, since, ran);
}

void TimerBar::showTimer()
{
    const auto timer = m_session.timer();
    setVisible(timer.has_value() && !m_isAway);
    if (!timer) {
        m_tick.stop();
        m_form->hide();
        // It was about that clock, and so is what undo would bring back into it.
        m_note->setText({});
        return;
    }
    m_tick.start(tickMilliseconds);
    const auto progress = m_session.timerProgress();
    m_words->setText(wordsFor(*timer, progress));
    m_leaveOut->setVisible(progress.gap_began.has_value());
    m_pause->setText(progress.is_paused ? tr("Go on") : tr("Pause"));
    m_stop->setIcon(m_session.theme().icon(QStringLiteral("actions/timer_stop")));
    // The same words stay as they are, with the cursor in them.
    if (const QString note = toQt(progress.note);
        !m_note->isModified() && m_note->text().trimmed() != note)
        m_note->setText(note);
}

} // namespace lastrivet::ui
