// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/EntryBar.h"

#include "core/entry/EntryLine.h"
#include "core/entry/SignedRegion.h"
#include "core/project/acts/Sessions.h"
#include "core/project/acts/WorkActs.h"
#include "ui/convert/FieldText.h"
#include "ui/convert/QtText.h"
#include "ui/daylog/EntryEdit.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/RecordNames.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace lastrivet::ui {

namespace {

constexpr int tickMilliseconds = 15000;
/// Beyond this nobody knows any more whether the clock was forgotten.
constexpr Minutes longestUnasked{4 * 60};

enum Changed { NotSaid, No, Yes, IsClosing };

Minutes between(Moment began, Moment now)
{
    const auto days = (now.day() - began.day()).count();
    return Minutes{days * 24 * 60 + now.minuteOfDay() - began.minuteOfDay()};
}

} // namespace

EntryBar::EntryBar(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_line(new EntryEdit(session, this))
    , m_timerButton(new QPushButton(this))
    , m_timer(new QLabel(this))
    , m_understood(new QLabel(this))
    , m_question(new QWidget(this))
    , m_questionWords(new QLabel(m_question))
    , m_changed(new QComboBox(m_question))
    , m_ask(new ActLine(session, this))
{
    build();
    updateTimer();
    understand();
}

void EntryBar::build()
{
    m_line->setPlaceholderText(tr("What was done, as in “2h15 left aileron: dimpled both skins”"));
    m_line->setAccessibleName(tr("New log entry"));
    m_line->setFont(m_session.theme().font(1));
    m_line->setEnabled(!m_session.isReadOnly());
    m_timerButton->setEnabled(!m_session.isReadOnly());
    m_understood->setWordWrap(true);
    m_questionWords->setWordWrap(true);
    m_changed->setAccessibleName(tr("Did this change what was inspected?"));
    auto *question = new QHBoxLayout(m_question);
    question->setContentsMargins(0, 0, 0, 0);
    question->addWidget(m_questionWords, 1);
    question->addWidget(m_changed);
    auto *line = new QHBoxLayout;
    line->addWidget(m_line, 1);
    line->addWidget(m_timerButton);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    layout->addLayout(line);
    layout->addWidget(m_understood);
    layout->addWidget(m_question);
    layout->addWidget(m_timer);
    layout->addWidget(m_ask);
    connect(m_line, &EntryEdit::entered, this, &EntryBar::enter);
    connect(m_line, &QLineEdit::textChanged, this, &EntryBar::understand);
    connect(m_timerButton, &QPushButton::clicked, this, &EntryBar::startOrStop);
    connect(&m_session, &Session::timerChanged, this, &EntryBar::updateTimer);
    connect(&m_tick, &QTimer::timeout, this, &EntryBar::updateTimer);
    connect(m_ask, &ActLine::ended, this, &EntryBar::focusLine);
}

void EntryBar::focusLine()
{
    m_line->setFocus();
}

void EntryBar::recordsChanged()
{
    m_finder.reset();
    understand();
    updateTimer();
}

entry::EntryReading EntryBar::reading(const QString &text) const
{
    const auto records = m_session.records();
    if (!m_finder)
        m_finder.emplace(*records);
    return entry::readEntry(toStd(text), *records, *m_finder, m_session.now());
}

QString EntryBar::sessionWords(const WorkSession &session) const
{
    const auto records = m_session.records();
    QStringList words;
    words.append(session.began->dayOnly() == m_session.today()
                     ? session.began->hasTime() ? dateText(*session.began) : tr("today")
                     : dateText(*session.began));
    words.append(session.minutes ? hoursText(*session.minutes) : tr("no time written down"));
    const QString part = partName(*records, session.component_id);
    words.append(part.isEmpty() ? tr("no part") : part);
    words.append(plainWord(word(session.kind)));
    if (session.squawk_id)
        words.append(tr("on squawk %1").arg(toQt(records->find(session.squawk_id)->number)));
    QStringList people;
    for (const auto &worker : session.workers)
        people.append(personName(*records, worker.person_id));
    if (!people.isEmpty())
        words.append(people.join(tr(" and ")));
    return words.join(QStringLiteral(" · "));
}

QString EntryBar::inWords(const entry::EntryReading &reading) const
{
    QStringList lines;
    for (const WorkSession &session : reading.sessions)
        lines.append(sessionWords(session));
    const QString note = toQt(reading.sessions.front().note);
    if (!note.isEmpty())
        lines.last().append(QStringLiteral(" · “%1”").arg(note));
    QStringList steps;
    for (const auto step : reading.steps_done)
        steps.append(shortName(*m_session.records(), {RecordType::Step, step.value()}));
    if (!steps.isEmpty())
        lines.append(tr("Ticks: %1").arg(steps.join(QStringLiteral("; "))));
    for (const Message &problem : reading.problems)
        lines.append(QStringLiteral("! ") + ui::inWords(problem));
    return lines.join(QLatin1Char('\n'));
}

void EntryBar::understand()
{
    const auto read = reading(m_line->text());
    m_understood->setText(
        read.sessions.empty()
            ? tr("In front of the colon: how long, which day, parts joined by +, “with” a name. "
                 "Behind it the note, and “done” with the steps to tick.")
            : inWords(read));
    m_understood->setAccessibleName(m_understood->text());
    askAboutSigned(read);
}

/// While a region is signed for and still open, whoever works there says whether that matters.
void EntryBar::askAboutSigned(const entry::EntryReading &reading)
{
    const auto records = m_session.records();
    IdSet<Closing> closings;
    if (!reading.sessions.empty())
        closings = entry::signedAndOpen(*records, *m_session.answer(),
                                        reading.sessions.front().component_id);
    m_question->setVisible(!closings.empty());
    if (closings.empty()) {
        m_changed->clear();
        return;
    }
    m_closingStep = entry::closingStep(*records, closings);
    m_questionWords->setText(
        tr("“%1” is signed for and still open. Did this change what was inspected?")
            .arg(shortName(*records, {RecordType::Closing, closings.front().value()})));
    const bool wasEmpty = m_changed->count() == 0;
    if (!wasEmpty)
        return;
    m_changed->addItems({tr("not said"), tr("no"), tr("yes")});
    if (m_closingStep)
        m_changed->addItem(tr("this is the closing itself"));
}

void EntryBar::applyAnswer(entry::EntryReading &reading) const
{
    const int answer = m_changed->currentIndex();
    for (WorkSession &session : reading.sessions) {
        if (answer == No || answer == Yes)
            session.changed_inspected = answer == Yes;
        if (answer == IsClosing)
            session.step_id = m_closingStep;
    }
}

void EntryBar::enter()
{
    auto read = reading(m_line->text());
    if (read.sessions.empty()) {
        Q_EMIT leftForList();
        return;
    }
    applyAnswer(read);
    if (record(std::move(read)))
        m_line->clear();
}

bool EntryBar::record(entry::EntryReading read)
{
    const WorkSession &first = read.sessions.front();
    const QString part = partName(*m_session.records(), first.component_id);
    const QString time = first.minutes ? hoursText(*first.minutes) : tr("work");
    const QString label = part.isEmpty() ? tr("Logged: %1").arg(time)
                                         : tr("Logged: %1 on %2").arg(time, part);
    Id<WorkSession> added;
    const bool isDone = m_session.change(label, [&](Edit &edit) {
        for (const WorkSession &session : read.sessions)
            added = acts::enterSession(edit, session);
        for (const auto step : read.steps_done)
            acts::tickStep(edit, step, *first.began);
    });
    if (isDone)
        Q_EMIT recorded(added.value());
    return isDone;
}

void EntryBar::startOrStop()
{
    if (m_session.timer())
        stop();
    else
        start();
}

/// Work begins on what the line names; the line stays, to be finished when work stops.
void EntryBar::start()
{
    RunningTimer timer{m_session.now(), {}, {}, {}};
    const auto read = reading(m_line->text());
    if (!read.sessions.empty()) {
        timer.component_id = read.sessions.front().component_id;
        timer.step_id = read.sessions.front().step_id;
        timer.squawk_id = read.sessions.front().squawk_id;
    }
    m_session.setTimer(timer);
    m_line->setFocus();
}

void EntryBar::stop()
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
        .text = m_line->text(),
        .durationLabel = tr("Worked for"),
    };
    if (!isLong)
        question.duration = std::max(ran, Minutes{1});
    m_ask->ask(question, [this](const ActLine::Answer &answer) {
        return recordTimed(answer.text, *answer.duration);
    });
}

bool EntryBar::recordTimed(const QString &text, Minutes minutes)
{
    const auto timer = m_session.timer();
    if (!timer)
        return false;
    auto read = reading(text);
    if (read.sessions.empty())
        read.sessions.emplace_back();
    WorkSession &first = read.sessions.front();
    first.began = timer->began;
    if (read.sessions.size() == 1)
        first.minutes = minutes;
    if (!first.component_id)
        first.component_id = timer->component_id;
    if (!first.step_id)
        first.step_id = timer->step_id;
    if (!first.squawk_id)
        first.squawk_id = timer->squawk_id;
    applyAnswer(read);
    if (!record(std::move(read)))
        return false;
    m_session.setTimer(std::nullopt);
    m_line->clear();
    return true;
}

void EntryBar::updateTimer()
{
    const auto timer = m_session.timer();
    const auto icon = timer ? QStringLiteral("actions/timer_stop")
                            : QStringLiteral("actions/timer_start");
    m_timerButton->setIcon(m_session.theme().icon(icon));
    m_timerButton->setText(timer ? tr("Stop work") : tr("Start work"));
    m_timer->setVisible(timer.has_value());
    if (!timer) {
        m_tick.stop();
        return;
    }
    m_tick.start(tickMilliseconds);
    const QString ran = hoursText(between(timer->began, m_session.now()));
    const QString part = partName(*m_session.records(), timer->component_id);
    m_timer->setText(part.isEmpty()
                         ? tr("At work since %1: %2").arg(dateText(timer->began), ran)
                         : tr("At work on %1 since %2: %3").arg(part, dateText(timer->began), ran));
}

} // namespace lastrivet::ui
