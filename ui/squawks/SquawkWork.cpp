// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkWork.h"

#include "core/entry/EntryLine.h"
#include "core/project/acts/Sessions.h"
#include "core/project/acts/WorkActs.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RecordNames.h"
#include "ui/widgets/RowListView.h"
#include "ui/widgets/Section.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <string>

namespace lastrivet::ui {

namespace {

constexpr int tickMilliseconds = 15000;

std::vector<const WorkSession *> sessionsOn(const Records &records, Id<Squawk> squawk)
{
    std::vector<const WorkSession *> sessions;
    for (const WorkSession &session : records.work_sessions) {
        if (session.squawk_id == squawk && !session.withdrawn_on)
            sessions.push_back(&session);
    }
    std::ranges::stable_sort(sessions, [](const WorkSession *a, const WorkSession *b) {
        return sortsBefore(*b->began, *a->began);
    });
    return sessions;
}

std::string subject(Id<Squawk> squawk)
{
    return std::to_string(squawk.value());
}

QString workersOf(const Records &records, const WorkSession &session)
{
    QStringList names;
    for (const auto &worker : session.workers)
        names.append(personName(records, worker.person_id));
    return names.join(QStringLiteral(", "));
}

} // namespace

SquawkWork::SquawkWork(Session &session, QWidget *parent)
    : QWidget(parent)
    , m_session(session)
    , m_stops(session, "squawk_clock")
    , m_sessions(new Section(session.theme(), tr("Work on it"),
                             tr("No work on it is in the log yet."), this))
    , m_sum(new QLabel(this))
    , m_line(new QLineEdit(this))
    , m_draft(session, "squawk_work", *m_line)
    , m_understood(new QLabel(this))
    , m_clock(new QPushButton(this))
    , m_running(new QLabel(this))
{
    build();
    connectParts();
}

void SquawkWork::build()
{
    m_line->setPlaceholderText(tr("Log work on it, as in “45m: drilled out” or “2h15 yesterday”"));
    m_line->setAccessibleName(tr("Log work on this squawk"));
    m_understood->setWordWrap(true);
    m_sum->setWordWrap(true);
    auto *line = new QHBoxLayout;
    line->addWidget(m_line, 1);
    line->addWidget(m_clock);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addWidget(m_sessions);
    layout->addWidget(m_sum);
    layout->addLayout(line);
    layout->addWidget(m_understood);
    layout->addWidget(m_running);
}

void SquawkWork::connectParts()
{
    connect(m_sessions, &Section::chosen, this,
            [this](const RecordRef &record) { m_session.goTo(record); });
    connect(m_line, &QLineEdit::textChanged, this, &SquawkWork::understand);
    connect(m_line, &QLineEdit::textEdited, this, [this](const QString &text) {
        // An emptied line is about nothing any more.
        if (!text.isEmpty())
            return;
        m_stopped = {};
        keepDraft();
    });
    connect(m_line, &QLineEdit::returnPressed, this, &SquawkWork::log);
    connect(m_clock, &QPushButton::clicked, this, &SquawkWork::startOrStop);
    connect(&m_session, &Session::timerChanged, this, &SquawkWork::updateClock);
    connect(&m_tick, &QTimer::timeout, this, &SquawkWork::updateClock);
}

void SquawkWork::show(Id<Squawk> squawk)
{
    if (squawk != m_squawk) {
        keepDraft();
        m_squawk = squawk;
        m_doubt.forget();
        m_draft.turnTo(subject(squawk));
        if (m_session.timer() && m_stops.of(subject(squawk)) == clockText())
            m_stopped = squawk;
    }
    refresh();
}

void SquawkWork::hideEvent(QHideEvent *event)
{
    keepDraft();
    QWidget::hideEvent(event);
}

void SquawkWork::keepDraft()
{
    if (!m_squawk)
        return;
    m_draft.keep();
    m_stops.keep(subject(m_squawk), isOfClock() ? clockText() : QString());
}

QString SquawkWork::clockText() const
{
    return m_session.timer() ? toQt(m_session.timer()->began.text()) : QString();
}

void SquawkWork::refresh()
{
    if (const Squawk *squawk = m_session.records()->findLive(m_squawk))
        fillSessions(*squawk);
    m_line->setEnabled(!m_session.isReadOnly());
    updateClock();
    understand();
}

void SquawkWork::fillSessions(const Squawk &squawk)
{
    const auto records = m_session.records();
    std::vector<ListRow> rows;
    Minutes sum{0};
    for (const WorkSession *session : sessionsOn(*records, squawk.id)) {
        ListRow row{{RecordType::WorkSession, session->id.value()}, dateText(*session->began)};
        const QString note = toQt(session->note);
        const QString workers = workersOf(*records, *session);
        row.detail = note.isEmpty() ? workers : note + QStringLiteral(" · ") + workers;
        row.figure = session->minutes ? hoursText(*session->minutes) : tr("not written down");
        rows.push_back(std::move(row));
        sum = sum + session->minutes.value_or(Minutes{0});
    }
    m_sum->setVisible(!rows.empty() || squawk.estimate_minutes);
    m_sum->setText(squawk.estimate_minutes
                       ? tr("%1 worked; the estimate was %2")
                             .arg(hoursText(sum), hoursText(*squawk.estimate_minutes))
                       : tr("%1 worked").arg(hoursText(sum)));
    m_sessions->setRows(std::move(rows));
}

entry::EntryReading SquawkWork::reading() const
{
    const auto records = m_session.records();
    auto read =
        entry::readEntry(toStd(m_line->text()), *records, m_session.partFinder(), m_session.now());
    for (WorkSession &session : read.sessions) {
        session.squawk_id = m_squawk;
        // Whatever is done about a defect is rework, but for looking at it and thinking about it.
        if (session.kind != WorkKind::Inspection && session.kind != WorkKind::Planning)
            session.kind = WorkKind::Rework;
    }
    if (!isOfClock())
        return read;
    for (WorkSession &session : read.sessions) {
        // A day that is typed counts more than the clock's.
        if (session.began == m_session.today())
            session.began = m_session.timer()->began;
    }
    return read;
}

bool SquawkWork::isOfClock() const
{
    const auto timer = m_session.timer();
    return m_stopped && m_stopped == m_squawk && timer && timer->squawk_id == m_squawk;
}

void SquawkWork::understand()
{
    if (m_line->text().trimmed().isEmpty()) {
        m_understood->hide();
        return;
    }
    const auto read = reading();
    m_understood->setVisible(!read.sessions.empty());
    if (read.sessions.empty())
        return;
    const WorkSession &session = read.sessions.front();
    QStringList words{dateText(*session.began),
                      session.minutes ? hoursText(*session.minutes) : tr("no time written down")};
    if (!session.note.empty())
        words.append(tr("“%1”").arg(toQt(session.note)));
    if (isOfClock())
        words.append(tr("the clock is stopped"));
    for (const auto *said : {&read.errors, &read.problems}) {
        for (const Message &message : *said)
            words.append(inWords(message));
    }
    m_understood->setText(words.join(QStringLiteral(" · ")));
}

bool SquawkWork::mayBeLogged(const entry::EntryReading &reading)
{
    const auto objection = m_doubt.about(reading, m_line->text());
    if (!objection)
        return true;
    m_session.complain(
        objection->is_overruled_by_saying_so
            ? tr("Not logged yet: %1 Enter once more logs it like this.").arg(objection->why)
            : tr("Not logged yet: %1").arg(objection->why));
    return false;
}

void SquawkWork::log()
{
    const auto read = reading();
    const Squawk *squawk = m_session.records()->findLive(m_squawk);
    if (!squawk || read.sessions.empty() || !mayBeLogged(read))
        return;
    const bool isClockDone = isOfClock();
    const bool isDone =
        m_session.change(tr("Work logged on squawk %1").arg(toQt(squawk->number)), [&](Edit &edit) {
            for (const WorkSession &session : read.sessions)
                acts::enterSession(edit, session);
            for (const auto step : read.steps_done)
                acts::tickStep(edit, step, *read.sessions.front().began);
        });
    if (!isDone)
        return;
    // Undo is about the work from here on, not about its words.
    m_line->setText({});
    m_stopped = {};
    if (isClockDone)
        m_session.setTimer(std::nullopt);
    keepDraft();
}

void SquawkWork::startOrStop()
{
    const Squawk *squawk = m_session.records()->findLive(m_squawk);
    if (m_session.timer())
        stop();
    else if (squawk)
        m_session.setTimer(RunningTimer{m_session.now(), squawk->component_id, {}, m_squawk});
}

/// The time goes into the line, in front of what is typed there, to be added to or mended; Enter
/// logs it and stops the clock.
void SquawkWork::stop()
{
    m_line->setFocus();
    if (isOfClock())
        return;
    const TimerProgress progress = m_session.timerProgress();
    const Minutes worked = workedBy(progress, m_session.now());
    const QString typed = m_line->text().trimmed();
    const QString words = typed.isEmpty() ? toQt(progress.note) : typed;
    m_line->setText(words);
    const auto read = reading();
    const bool isTimed = !read.sessions.empty() && read.sessions.front().minutes;
    m_stopped = m_squawk;
    if (worked > longestUnasked || progress.gap_began) {
        m_session.complain(tr("The clock has run for %1. How long was really worked on it?")
                               .arg(hoursText(worked)));
        m_line->home(false);
    } else if (!isTimed) {
        // What stands in front of a colon already takes the time in.
        const auto front =
            words.contains(QLatin1Char(':')) ? QStringLiteral("%1m ") : QStringLiteral("%1m: ");
        m_line->setText(front.arg(std::max(worked, Minutes{1}).count()) + words);
    }
    // Together: its time without where it is from would be counted twice after a crash.
    keepDraft();
    understand();
}

void SquawkWork::updateClock()
{
    const auto timer = m_session.timer();
    const bool isOnIt = timer && timer->squawk_id == m_squawk;
    m_clock->setText(isOnIt ? tr("Stop work") : tr("Start work"));
    m_clock->setIcon(m_session.theme().icon(isOnIt ? QStringLiteral("actions/timer_stop")
                                                   : QStringLiteral("actions/timer_start")));
    m_clock->setEnabled(!m_session.isReadOnly() && (!timer || isOnIt));
    m_running->setVisible(timer.has_value());
    if (!timer) {
        m_tick.stop();
        return;
    }
    m_tick.start(tickMilliseconds);
    const QString ran = hoursText(workedBy(m_session.timerProgress(), m_session.now()));
    m_running->setText(isOnIt ? tr("At work on it since %1: %2").arg(dateText(timer->began), ran)
                              : tr("The clock runs on something else; stop it in the log first."));
}

} // namespace lastrivet::ui
