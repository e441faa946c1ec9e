// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Session.h"

#include "core/base/Error.h"
#include "core/readiness/Readiness.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"
#include "ui/convert/RefusalText.h"

#include <QPointer>

#include <cstddef>
#include <cstdint>
#include <utility>

namespace lastrivet::ui {

namespace {

/// Above this many records it would be hard to see what a single key press undid.
constexpr std::size_t manyRecords = 50;
constexpr qint64 undoToldMilliseconds = 60000;

} // namespace

Session::Session(std::unique_ptr<Project> project, Executor &executor, Theme &theme,
                 QObject *parent)
    : QObject(parent)
    , m_project(std::move(project))
    , m_executor(executor)
    , m_theme(theme)
    , m_profile(std::make_shared<Profile>(m_project->profile()))
    , m_records(m_project->records())
    , m_answer(std::make_shared<readiness::Answer>(
          readiness::readiness(*m_records, m_project->profile(), m_project->today())))
    , m_answered(m_records)
    , m_timer(runningTimer(*m_project))
{
    if (m_timer)
        m_timerProgress = lastrivet::timerProgress(*m_project, *m_timer);
    m_subscription = m_project->subscribe([this](const ChangeNotice &notice) { receive(notice); });
}

Session::~Session()
{
    m_project->unsubscribe(m_subscription);
    for (const auto &running : m_running) {
        if (const auto progress = running.lock())
            progress->cancel();
    }
}

void Session::receive(const ChangeNotice &notice)
{
    m_records = notice.after;
    m_partFinder.reset();
    m_undoTold.invalidate();
    if (notice.before->profile_copy != notice.after->profile_copy)
        m_profile = std::make_shared<Profile>(m_project->profile());
    Q_EMIT changed(notice);
    startAnswer();
}

void Session::startAnswer()
{
    if (m_isAnswering || isAnswerCurrent())
        return;
    m_isAnswering = true;
    const auto records = m_records;
    const auto answer = std::make_shared<AnswerPointer>();
    m_executor.run(
        this,
        [records, profile = m_profile, answer, today = today()] {
            *answer = std::make_shared<readiness::Answer>(
                readiness::readiness(*records, *profile, today));
        },
        [this, records, answer] {
            m_isAnswering = false;
            m_answer = *answer;
            m_answered = records;
            Q_EMIT answerChanged();
            startAnswer();
        });
}

void Session::lookAtClock()
{
    if (m_answer->as_of == today())
        return;
    m_answered.reset();
    startAnswer();
}

bool Session::report(const Result<ChangeNotice, Refusal> &result, const QString &sentence)
{
    // Without an undo button, which would undo the change before it.
    if (result && result->touched.empty())
        Q_EMIT said(tr("Nothing had to be changed."), false);
    else if (result)
        Q_EMIT said(sentence, true);
    else
        complain(nothingChanged(result.reason()));
    return bool(result);
}

bool Session::mayChange()
{
    if (!isReadOnly())
        return true;
    complain(inWords(m_project->readOnlyMessage()));
    return false;
}

Session::Outcome Session::attempt(const QString &label, const Body &body)
{
    try {
        const auto result = m_project->change(toStd(label), body);
        if (report(result, label))
            return Outcome::Made;
        return result.reason().violations.empty() ? Outcome::NotSaved : Outcome::AgainstRules;
    } catch (const Fault &fault) {
        complain(nothingChanged(fault));
        return Outcome::NotSaved;
    }
}

void Session::undo()
{
    const auto label = m_project->undoLabel();
    try {
        const auto result = m_project->undo();
        if (result && result->touched.size() > manyRecords)
            say(tr("Undone: %1 (%2 records). Redo brings all of it back.")
                    .arg(toQt(label.value_or("")),
                         countText(std::int64_t(result->touched.size()))));
        else if (result)
            say(tr("Undone: %1").arg(toQt(label.value_or(""))));
        else
            complain(inWords(result.reason()));
    } catch (const Fault &fault) {
        complain(fault);
    }
}

void Session::askToUndo()
{
    // Who comes back to it after minutes does not press a second time.
    const bool isTold = m_undoTold.isValid() && !m_undoTold.hasExpired(undoToldMilliseconds);
    const auto size = isTold ? std::optional<std::size_t>(0)
                             : read([this] { return m_project->undoSize(); }, Telling::EachTime);
    if (!size)
        return;
    if (*size <= manyRecords) {
        undo();
        return;
    }
    m_undoTold.start();
    complain(tr("“%1” changed %2 records. Undo once more to take all of it back; redo brings it "
                "again.")
                 .arg(toQt(m_project->undoLabel().value_or("")), countText(std::int64_t(*size))));
}

void Session::redo()
{
    const auto label = m_project->redoLabel();
    try {
        report(m_project->redo(), tr("Done again: %1").arg(toQt(label.value_or(""))));
    } catch (const Fault &fault) {
        complain(fault);
    }
}

void Session::reverse(std::int64_t seq, const QString &label)
{
    const QString taken = tr("Taken back: %1").arg(label);
    try {
        const auto result = m_project->reverse(seq, toStd(taken));
        // Without an undo button, which would undo the change before it.
        if (result && result->kind == ChangeKind::Undo)
            say(taken);
        else
            report(result, taken);
    } catch (const Fault &fault) {
        complain(fault);
    }
}

void Session::complain(const std::exception &fault)
{
    complain(inWords(messageOf(fault)));
}

const entry::PartFinder &Session::partFinder() const
{
    if (!m_partFinder)
        m_partFinder.emplace(*m_records);
    return *m_partFinder;
}

bool Session::keep(const std::function<void()> &body)
{
    try {
        body();
        m_isKeepingInVain = false;
        return true;
    } catch (const Fault &fault) {
        // One complaint is enough, since the timer is stored every few seconds.
        if (!std::exchange(m_isKeepingInVain, true))
            complain(fault);
        return false;
    }
}

bool Session::keepLocalState(std::string_view key, std::optional<std::string_view> value)
{
    return keep([&] { m_project->setLocalState(key, value); });
}

LocalState Session::localState(std::string_view key)
{
    auto value = read([&] { return m_project->localState(key); });
    return value ? LocalState{true, std::move(*value)} : LocalState{};
}

void Session::tellUnread(const Fault &fault, Telling telling)
{
    // One complaint is enough, since pages read again with every change.
    if (!std::exchange(m_isReadingInVain, true) || telling == Telling::EachTime)
        complain(fault);
}

TimerProgress Session::timerProgress() const
{
    if (!m_timer)
        return freshProgress(now());
    try {
        m_timerProgress = lastrivet::timerProgress(*m_project, *m_timer);
    } catch (const Fault &) {
        // The progress read last, which the next tick stores again; a fresh one would lose pauses
        // and note.
        if (!m_timerProgress || m_timerProgress->began != m_timer->began)
            return freshProgress(m_timer->began);
    }
    return *m_timerProgress;
}

bool Session::setTimerProgress(const TimerProgress &progress)
{
    if (!keep([&] { lastrivet::setTimerProgress(*m_project, progress); }))
        return false;
    m_timerProgress = progress;
    Q_EMIT timerChanged();
    return true;
}

bool Session::setTimer(const std::optional<RunningTimer> &timer)
{
    // Somebody pressed a button and expects an answer each time.
    m_isKeepingInVain = false;
    if (!keep([&] { setRunningTimer(*m_project, timer); }))
        return false;
    m_timer = timer;
    if (!timer)
        m_timerProgress.reset();
    Q_EMIT timerChanged();
    return true;
}

bool Session::setTimer(const RunningTimer &timer, const TimerProgress &progress)
{
    m_isKeepingInVain = false;
    if (!keep([&] { lastrivet::setTimerProgress(*m_project, progress); }))
        return false;
    m_timerProgress = progress;
    return setTimer(timer);
}

std::shared_ptr<Progress> Session::runLong(const QString &title,
                                           std::function<void(Progress &)> work, QObject *context,
                                           std::function<void()> done,
                                           std::function<void()> notDone)
{
    const auto progress = std::make_shared<Progress>(title);
    const auto fault = std::make_shared<QString>();
    m_running.push_back(progress);
    Q_EMIT workStarted(progress);
    m_executor.run(
        this,
        [progress, fault, work = std::move(work)] {
            try {
                work(*progress);
            } catch (const std::exception &error) {
                *fault = inWords(messageOf(error));
            }
        },
        [this, progress, fault, done = std::move(done), notDone = std::move(notDone),
         context = QPointer<QObject>(context)] {
            std::erase_if(m_running, [&](const auto &one) { return one.lock() == progress; });
            // The foot of the window shows it to its end, even when the context is gone.
            Q_EMIT workEnded(progress);
            const bool isCancelled = progress->isCancelled() && !progress->isKept();
            if (!fault->isEmpty())
                complain(*fault);
            else if (isCancelled)
                say(tr("%1: cancelled, nothing was kept").arg(progress->title()));
            const bool isDone = fault->isEmpty() && !isCancelled;
            if (const auto &next = isDone ? done : notDone; context && next)
                next();
        });
    return progress;
}

std::vector<std::shared_ptr<Progress>> Session::running() const
{
    std::vector<std::shared_ptr<Progress>> all;
    for (const auto &one : m_running) {
        if (auto progress = one.lock())
            all.push_back(std::move(progress));
    }
    return all;
}

} // namespace lastrivet::ui
