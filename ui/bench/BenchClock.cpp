// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/BenchClock.h"

#include "ui/convert/QtText.h"
#include "ui/daylog/StopForm.h"
#include "ui/shell/Session.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RecordNames.h"

#include <QEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

namespace {

constexpr int tickMilliseconds = 15000;
constexpr int buttonHeight = 72;

} // namespace

BenchClock::BenchClock(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_button(new QPushButton(this))
    , m_running(new QLabel(this))
    , m_form(new StopForm(session, this))
{
    build();
    showClock();
}

void BenchClock::build()
{
    m_button->setMinimumHeight(buttonHeight);
    m_button->setEnabled(!m_session.isReadOnly());
    m_running->setWordWrap(true);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_button);
    layout->addWidget(m_running);
    layout->addWidget(m_form);
    m_button->installEventFilter(this);
    connect(m_button, &QPushButton::clicked, this, &BenchClock::startOrStop);
    connect(&m_session, &Session::timerChanged, this, &BenchClock::showClock);
    connect(&m_tick, &QTimer::timeout, this, &BenchClock::showClock);
    connect(m_form, &StopForm::recorded, this, [this] { m_button->setFocus(); });
    connect(m_form, &StopForm::left, this, [this] {
        m_form->hide();
        m_button->setFocus();
    });
}

/// Who presses twice at once means the start, and not to be asked about the end of it.
bool BenchClock::eventFilter(QObject *watched, QEvent *event)
{
    return (watched == m_button && event->type() == QEvent::MouseButtonDblClick) ||
           QWidget::eventFilter(watched, event);
}

void BenchClock::setPart(Id<Component> part)
{
    m_part = part;
    showClock();
}

void BenchClock::startOrStop()
{
    if (m_session.isReadOnly())
        return;
    if (!m_session.timer())
        start();
    else if (m_form->isHidden())
        m_form->ask();
    else
        m_form->goOn();
}

void BenchClock::start()
{
    if (m_session.setTimer(RunningTimer{m_session.now(), m_part, {}, {}}))
        m_session.say(tr("The clock runs: %1").arg(partName(*m_session.records(), m_part)));
}

void BenchClock::showClock()
{
    const auto timer = m_session.timer();
    const Theme &theme = m_session.theme();
    m_button->setIcon(
        timer ? theme.icon(QStringLiteral("actions/timer_stop"))
              : theme.icon(QStringLiteral("actions/timer_start"), theme.colours().accentText));
    m_button->setText(timer ? tr("Stop work (F2)") : tr("Start work (F2)"));
    setPrimary(*m_button, !timer);
    m_running->setVisible(timer.has_value());
    if (!timer) {
        m_tick.stop();
        m_form->hide();
        return;
    }
    m_tick.start(tickMilliseconds);
    const auto progress = m_session.timerProgress();
    const Minutes worked = workedBy(progress, m_session.now());
    const QString ran =
        progress.is_paused ? tr("Paused after %1").arg(hoursText(worked)) : hoursText(worked);
    const QString part = partName(*m_session.records(), timer->component_id);
    m_running->setText(
        part.isEmpty() || timer->component_id == m_part ? ran : tr("%1 on %2").arg(ran, part));
}

} // namespace lastrivet::ui
