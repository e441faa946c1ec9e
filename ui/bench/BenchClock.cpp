// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/BenchClock.h"

#include "core/entry/Fold.h"
#include "core/entry/KindOfWork.h"
#include "core/entry/SignedRegion.h"
#include "core/project/acts/Sessions.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RecordNames.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <initializer_list>

namespace lastrivet::ui {

namespace {

constexpr int tickMilliseconds = 15000;
constexpr int buttonHeight = 72;
/// Beyond this nobody knows any more whether the clock was forgotten.
constexpr Minutes longestUnasked{4 * 60};

enum Changed { NotSaid, No, Yes };

Minutes between(Moment began, Moment now)
{
    const auto days = (now.day() - began.day()).count();
    return Minutes{days * 24 * 60 + now.minuteOfDay() - began.minuteOfDay()};
}

} // namespace

BenchClock::BenchClock(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_button(new QPushButton(this))
    , m_running(new QLabel(this))
    , m_signed(new QLabel(this))
    , m_changed(new QComboBox(this))
    , m_ask(new ActLine(session, this))
{
    build();
    showClock();
}

void BenchClock::build()
{
    m_button->setMinimumHeight(buttonHeight);
    m_button->setEnabled(!m_session.isReadOnly());
    m_running->setWordWrap(true);
    m_signed->setWordWrap(true);
    m_signed->hide();
    m_changed->addItems({tr("not said"), tr("no"), tr("yes")});
    m_changed->setAccessibleName(tr("Did this change what was inspected?"));
    m_changed->hide();
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    for (QWidget *part :
         std::initializer_list<QWidget *>{m_button, m_running, m_signed, m_changed, m_ask})
        layout->addWidget(part);
    connect(m_button, &QPushButton::clicked, this, &BenchClock::startOrStop);
    connect(&m_session, &Session::timerChanged, this, &BenchClock::showClock);
    connect(&m_tick, &QTimer::timeout, this, &BenchClock::showClock);
    connect(m_ask, &ActLine::ended, this, [this] {
        m_signed->hide();
        m_changed->hide();
        m_button->setFocus();
    });
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
    if (m_session.timer())
        askWhatWasDone();
    else
        start();
}

void BenchClock::start()
{
    m_session.setTimer(RunningTimer{m_session.now(), m_part, {}, {}});
    m_session.say(tr("The clock runs: %1").arg(partName(*m_session.records(), m_part)));
}

void BenchClock::askWhatWasDone()
{
    const auto timer = m_session.timer();
    const Minutes ran = between(timer->began, m_session.now());
    const bool isLong = ran > longestUnasked;
    ActLine::Question question{
        .words = isLong ? tr("The clock has run for %1. How long was really worked, and at what?")
                              .arg(hoursText(ran))
                        : tr("What was done?"),
        .confirm = tr("Log it"),
        .textLabel = tr("Done"),
        .durationLabel = tr("Worked for"),
    };
    if (!isLong)
        question.duration = std::max(ran, Minutes{1});
    askAboutSigned(timer->component_id);
    m_ask->ask(question, [this](const ActLine::Answer &answer) {
        return record(answer.text, *answer.duration);
    });
}

/// While a region is signed for and still open, whoever works there says whether that matters.
void BenchClock::askAboutSigned(Id<Component> part)
{
    const auto records = m_session.records();
    const auto closings = entry::signedAndOpen(*records, *m_session.answer(), part);
    m_changed->setCurrentIndex(NotSaid);
    m_changed->setVisible(!closings.empty());
    m_signed->setVisible(!closings.empty());
    if (!closings.empty())
        m_signed->setText(
            tr("“%1” is signed for and still open. Did this change what was inspected?")
                .arg(shortName(*records, {RecordType::Closing, closings.front().value()})));
}

bool BenchClock::record(const QString &note, Minutes minutes)
{
    const auto timer = m_session.timer();
    if (!timer)
        return false;
    WorkSession work;
    work.began = timer->began;
    work.minutes = minutes;
    work.component_id = timer->component_id;
    work.step_id = timer->step_id;
    work.squawk_id = timer->squawk_id;
    work.note = toStd(note);
    work.kind = entry::kindGuessed(entry::foldedWords(work.note)).value_or(WorkKind::Other);
    if (!m_changed->isHidden() && m_changed->currentIndex() != NotSaid)
        work.changed_inspected = m_changed->currentIndex() == Yes;
    const QString part = partName(*m_session.records(), work.component_id);
    const QString label = part.isEmpty() ? tr("Logged: %1").arg(hoursText(minutes))
                                         : tr("Logged: %1 on %2").arg(hoursText(minutes), part);
    if (!m_session.change(label, [&](Edit &edit) { acts::enterSession(edit, work); }))
        return false;
    m_session.setTimer(std::nullopt);
    return true;
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
        return;
    }
    m_tick.start(tickMilliseconds);
    const QString ran = hoursText(between(timer->began, m_session.now()));
    const QString part = partName(*m_session.records(), timer->component_id);
    m_running->setText(
        part.isEmpty() || timer->component_id == m_part ? ran : tr("%1 on %2").arg(ran, part));
}

} // namespace lastrivet::ui
