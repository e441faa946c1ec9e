// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/StopForm.h"

#include "core/entry/ClockText.h"
#include "core/entry/DurationText.h"
#include "core/entry/EntryLine.h"
#include "core/entry/SharedTime.h"
#include "ui/convert/QtText.h"
#include "ui/daylog/Recording.h"
#include "ui/daylog/SignedQuestion.h"
#include "ui/shell/Drafts.h"
#include "ui/shell/Session.h"
#include "ui/widgets/FormRows.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/RecordLine.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStringList>
#include <QVBoxLayout>

#include <algorithm>
#include <string>

namespace lastrivet::ui {

namespace {

/// Where times are kept that were typed and not logged: when the clock began, when work stopped,
/// and how long it took, a line each.
constexpr const char *draftKind = "clock_stop";

QString clockText(Moment moment)
{
    return QTime(0, 0)
        .addSecs(60 * std::max(moment.minuteOfDay(), 0))
        .toString(QStringLiteral("HH:mm"));
}

} // namespace

StopForm::StopForm(Session &session, QWidget *parent)
    : QFrame(parent)
    , m_session(session)
    , m_words(new QLabel(this))
    , m_fields(new FormRows)
    , m_part(new RecordLine(session, RecordType::Component, this))
    , m_done(new QLineEdit(this))
    , m_stopped(new QLineEdit(this))
    , m_worked(new QLineEdit(this))
    , m_question(new SignedQuestion(session, this))
    , m_why(new QLabel(this))
{
    build();
    hide();
}

void StopForm::build()
{
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Button);
    m_words->setWordWrap(true);
    m_why->setWordWrap(true);
    m_done->setPlaceholderText(tr("as in the line for a new entry: with names, “done” and steps"));
    m_stopped->setMaximumWidth(120);
    m_worked->setMaximumWidth(120);
    auto *confirmButton = new QPushButton(tr("Log it"), this);
    confirmButton->setProperty("primary", true);
    auto *leaveButton = flatButton(tr("Keep it running"), this);
    const auto add = [this](const QString &label, QLineEdit *field) {
        field->setAccessibleName(label);
        m_fields->addRow(label, field);
    };
    add(tr("Part"), m_part);
    add(tr("Done"), m_done);
    add(tr("Stopped at"), m_stopped);
    add(tr("Worked for"), m_worked);
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(confirmButton);
    buttons->addWidget(leaveButton);
    buttons->addStretch(1);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 8, 12, 8);
    layout->addWidget(m_words);
    layout->addLayout(m_fields);
    layout->addWidget(m_question);
    layout->addWidget(m_why);
    layout->addLayout(buttons);
    connect(confirmButton, &QPushButton::clicked, this, &StopForm::confirm);
    connect(leaveButton, &QPushButton::clicked, this, &StopForm::leave);
    connectFields();
}

void StopForm::connectFields()
{
    for (QLineEdit *field : {m_done, m_stopped, m_worked})
        connect(field, &QLineEdit::returnPressed, this, &StopForm::confirm);
    for (QLineEdit *field : {m_done, m_stopped, m_worked})
        connect(field, &QLineEdit::textEdited, &m_soon, qOverload<>(&QTimer::start));
    connect(&m_soon, &QTimer::timeout, this, [this] {
        keepWords();
        keepTimes();
    });
    connect(m_part, &RecordLine::chosenByPerson, this, &StopForm::takePart);
    connect(m_stopped, &QLineEdit::textEdited, this, &StopForm::takeStopTime);
    connect(m_done, &QLineEdit::textEdited, this, &StopForm::takeTypedTime);
    connect(m_done, &QLineEdit::textChanged, this, &StopForm::askAboutSigned);
}

void StopForm::ask()
{
    const auto timer = m_session.timer();
    if (!timer)
        return;
    const auto progress = m_session.timerProgress();
    const Minutes worked = workedBy(progress, m_session.now());
    const bool isLong = worked > longestUnasked;
    if (progress.gap_began)
        m_words->setText(tr("From %1 on the computer slept or the program was closed, for %2. When "
                            "did work stop?")
                             .arg(dateText(*progress.gap_began), hoursText(progress.gaps)));
    else if (isLong)
        m_words->setText(
            tr("The clock has run for %1. When did work stop?").arg(hoursText(worked)));
    else
        m_words->setText(tr("What was done?"));
    m_part->setChosen(0);
    m_fields->setRowVisible(m_part, !timer->component_id);
    m_question->forget();
    m_doubt.forget();
    // What could not be kept when the form went is still in it.
    const bool isAskedAgain = m_asked == timer->began;
    const QStringList unkept = isAskedAgain && m_isKeptInVain ? timesTyped(*timer) : QStringList();
    m_asked = timer->began;
    if (!isAskedAgain || !m_done->isModified())
        m_done->setText(toQt(progress.note));
    m_typed = minutesTyped();
    m_stopped->setText(isLong ? QString() : clockText(m_session.now()));
    m_measured = isLong ? QString() : hoursText(std::max(worked, Minutes{1}));
    m_worked->setText(m_typed ? hoursText(*m_typed) : m_measured);
    takeUpTimes(*timer, unkept);
    m_why->hide();
    askAboutSigned();
    show();
    (isLong || progress.gap_began ? m_stopped : m_done)->setFocus();
}

void StopForm::takePart(qint64 part)
{
    auto timer = m_session.timer();
    if (!timer)
        return;
    timer->component_id = Id<Component>{part};
    if (!m_session.setTimer(timer))
        m_part->setChosen(0);
    askAboutSigned();
}

void StopForm::goOn()
{
    QWidget *last = focusWidget();
    (last ? last : m_done)->setFocus();
}

/// When work stopped, by the time of day in the form; none for what is no time, or lies ahead.
std::optional<Moment> StopForm::stopMoment() const
{
    const auto clock = entry::parseClock(toStd(m_stopped->text().trimmed()));
    if (!clock)
        return std::nullopt;
    const Moment since = m_session.timerProgress().running_since;
    auto stopped = Moment::ofTime(since.day(), *clock);
    if (stopped && after(since, *stopped)) // past midnight
        stopped = stopped->plusDays(1);
    return stopped && !after(*stopped, m_session.now()) ? stopped : std::nullopt;
}

/// The time at which work stopped says how long it was, pauses left out.
void StopForm::takeStopTime()
{
    if (const auto stopped = stopMoment())
        m_worked->setText(
            hoursText(std::max(workedBy(m_session.timerProgress(), *stopped), Minutes{1})));
}

std::optional<Minutes> StopForm::minutesTyped() const
{
    const auto timer = m_session.timer();
    if (!timer)
        return std::nullopt;
    std::optional<Minutes> sum;
    for (const WorkSession &session : reading(*timer).sessions) {
        if (session.minutes)
            sum = sum.value_or(Minutes{}) + *session.minutes;
    }
    return sum;
}

/// A time that is typed among the words is how long it took.
void StopForm::takeTypedTime()
{
    const auto typed = minutesTyped();
    if (typed == m_typed)
        return;
    if (!m_typed)
        m_measured = m_worked->text();
    m_worked->setText(typed ? hoursText(*typed) : m_measured);
    m_typed = typed;
}

entry::EntryReading StopForm::reading(const RunningTimer &timer) const
{
    const auto records = m_session.records();
    auto read =
        entry::readEntry(toStd(m_done->text()), *records, m_session.partFinder(), m_session.now());
    if (read.sessions.empty())
        read.sessions.emplace_back();
    for (WorkSession &session : read.sessions) {
        session.began = timer.began;
        if (!session.component_id)
            session.component_id = timer.component_id;
        if (!session.step_id)
            session.step_id = timer.step_id;
        if (!session.squawk_id)
            session.squawk_id = timer.squawk_id;
    }
    return read;
}

void StopForm::askAboutSigned()
{
    const auto timer = m_session.timer();
    if (!timer)
        return;
    IdSet<Component> parts;
    for (const WorkSession &session : reading(*timer).sessions)
        parts.push_back(session.component_id);
    m_question->askAbout(parts);
}

void StopForm::explain(const QString &sentence, QLineEdit *field)
{
    m_why->setText(sentence);
    m_why->show();
    field->setFocus();
}

void StopForm::confirm()
{
    const bool isPartTyped = m_part->isBeingTyped() && !m_part->text().trimmed().isEmpty();
    m_part->settle();
    if (isPartTyped && !m_part->chosen()) {
        m_part->setFocus();
        return;
    }
    logIt();
}

void StopForm::logIt()
{
    const auto timer = m_session.timer();
    const auto minutes = entry::parseDuration(toStd(m_worked->text()));
    if (!timer)
        return;
    const bool isStopTyped = m_stopped->isModified() && !m_stopped->text().trimmed().isEmpty();
    if (isStopTyped && !stopMoment()) {
        explain(tr("When did work stop? Write it as 17:30; it cannot lie ahead."), m_stopped);
        return;
    }
    if (!minutes || *minutes > Minutes{24 * 60}) {
        explain(tr("How long did it take? Write it as 2h15 or 90m, at most a day."), m_worked);
        return;
    }
    auto read = reading(*timer);
    if (const auto objection = m_doubt.about(read, m_done->text())) {
        explain(objection->is_overruled_by_saying_so
                    ? tr("%1 “Log it” once more logs it like this.").arg(objection->why)
                    : objection->why,
                m_done);
        return;
    }
    if (read.sessions.size() == 1) {
        read.sessions.front().minutes = minutes;
    } else {
        const auto shares = entry::sharesOf(*minutes, read.sessions.size());
        for (std::size_t i = 0; i < shares.size(); ++i)
            read.sessions[i].minutes = shares[i];
    }
    m_question->apply(read);
    const auto added = recordEntry(m_session, read);
    if (!added)
        return;
    m_done->setModified(false);
    forgetTimes();
    hide();
    m_session.setTimer(std::nullopt);
    Q_EMIT recorded(added->value());
}

void StopForm::keepWords()
{
    if (!m_done->isModified() || !m_session.timer() || m_session.isReadOnly())
        return;
    auto progress = m_session.timerProgress();
    progress.note = toStd(m_done->text());
    if (m_session.setTimerProgress(progress))
        m_done->setModified(false);
}

/// As they are kept; of a field that nobody typed in, nothing.
QStringList StopForm::timesTyped(const RunningTimer &timer) const
{
    return {toQt(timer.began.text()), m_stopped->isModified() ? m_stopped->text() : QString(),
            m_worked->isModified() ? m_worked->text() : QString()};
}

void StopForm::takeUpTimes(const RunningTimer &timer, const QStringList &unkept)
{
    const QStringList kept =
        unkept.isEmpty() ? Drafts(m_session, draftKind).of().split(QLatin1Char('\n')) : unkept;
    m_areTimesKept = kept.size() == 3 && kept[0] == toQt(timer.began.text());
    if (!m_areTimesKept)
        return;
    if (!kept[1].isEmpty()) {
        m_stopped->setText(kept[1]);
        m_stopped->setModified(true);
        takeStopTime();
    }
    if (!kept[2].isEmpty()) {
        m_worked->setText(kept[2]);
        m_worked->setModified(true);
    }
}

void StopForm::keepTimes()
{
    const auto timer = m_session.timer();
    QString typed;
    if (timer && (m_stopped->isModified() || m_worked->isModified()))
        typed = timesTyped(*timer).join(QLatin1Char('\n'));
    if (typed.isEmpty() && !m_areTimesKept)
        return;
    Drafts drafts(m_session, draftKind);
    drafts.keep({}, typed);
    m_areTimesKept = !typed.isEmpty();
    m_isKeptInVain = !drafts.isWritten();
}

void StopForm::forgetTimes()
{
    m_stopped->setModified(false);
    m_worked->setModified(false);
    keepTimes();
}

void StopForm::leave()
{
    forgetTimes();
    Q_EMIT left();
}

void StopForm::hideEvent(QHideEvent *event)
{
    keepWords();
    keepTimes();
    QFrame::hideEvent(event);
}

void StopForm::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        leave();
    else
        QFrame::keyPressEvent(event);
}

} // namespace lastrivet::ui
