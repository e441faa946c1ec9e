// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Error.h"
#include "core/entry/PartFinder.h"
#include "core/entry/TimerProgress.h"
#include "core/project/Project.h"
#include "core/readiness/Answer.h"
#include "ui/shell/Executor.h"
#include "ui/shell/Progress.h"
#include "ui/shell/Theme.h"

#include <QElapsedTimer>
#include <QObject>
#include <QString>

#include <exception>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

namespace lastrivet::ui {

/// A value of this computer's local state. One that could not be read must not be taken for empty,
/// and must not be overwritten.
struct LocalState {
    bool isRead = false;
    std::optional<std::string> value;
};

/// An open project as the pages use it: the snapshot, the readiness answer, and functions to change
/// records, to go to a record, and to say what happened.
class Session final : public QObject {
    Q_OBJECT

public:
    using AnswerPointer = std::shared_ptr<const readiness::Answer>;
    using Body = Project::Body;

    /// `executor` and `theme` outlive the session.
    Session(std::unique_ptr<Project> project, Executor &executor, Theme &theme,
            QObject *parent = nullptr);
    ~Session() override;

    Project &project() const { return *m_project; }
    Executor &executor() const { return m_executor; }
    Theme &theme() const { return m_theme; }
    Snapshot records() const { return m_records; }
    /// Never null; belongs to an older snapshot while `isAnswerCurrent` is false.
    AnswerPointer answer() const { return m_answer; }
    bool isAnswerCurrent() const { return m_answered == m_records; }
    Moment now() const { return m_project->now(); }
    Moment today() const { return m_project->today(); }
    /// True while changes are refused: read-only, or long work has the project.
    bool isReadOnly() const { return m_project->isReadOnly(); }
    /// False while they are refused, which is said then, with the reason.
    bool mayChange();

    /// What became of a change: made, refused because it breaks a rule, or not saved; the last has
    /// nothing to do with what was typed, and may succeed the next time.
    enum class Outcome { Made, AgainstRules, NotSaved };
    /// Makes a change named `label` and says so, offering undo; says why when it is refused.
    Outcome attempt(const QString &label, const Body &body);
    /// The same; true when the change was made.
    bool change(const QString &label, const Body &body)
    {
        return attempt(label, body) == Outcome::Made;
    }
    void undo();
    /// The same for a key that may be pressed once too often: undoes a change of very many records
    /// only when asked twice.
    void askToUndo();
    void redo();
    /// Takes back what an older row of the journal changed, whose label is `label`.
    void reverse(std::int64_t seq, const QString &label);

    /// Finds parts of the current snapshot by their words; valid until the next change.
    const entry::PartFinder &partFinder() const;

    /// The timer of the log, running or not.
    const std::optional<RunningTimer> &timer() const { return m_timer; }
    /// The progress of the running timer, as it was last read; a fresh one while none runs.
    TimerProgress timerProgress() const;
    /// Both return true when the timer was stored, and say why when it could not be.
    bool setTimer(const std::optional<RunningTimer> &timer);
    bool setTimer(const RunningTimer &timer, const TimerProgress &progress);
    /// Stores the progress alone, as `keepLocalState`.
    bool setTimerProgress(const TimerProgress &progress);
    /// Stores a value on this computer, or removes it. False when that failed, which is said once
    /// until something can be stored again.
    bool keepLocalState(std::string_view key, std::optional<std::string_view> value);
    LocalState localState(std::string_view key);
    /// How often it is said that the project could not be read.
    enum class Telling { OnceUntilRead, EachTime };
    /// The result of `body`, which reads the project; nothing when that failed, which is said.
    template <class Body>
    std::optional<std::invoke_result_t<Body>> read(const Body &body,
                                                   Telling telling = Telling::OnceUntilRead)
    {
        try {
            auto answer = std::make_optional(body());
            m_isReadingInVain = false;
            return answer;
        } catch (const Fault &fault) {
            tellUnread(fault, telling);
            return std::nullopt;
        }
    }

    /// Asks the window to show a record on the page that it belongs to.
    void goTo(RecordRef record) { Q_EMIT recordWanted(record); }
    /// Says what happened, in the line at the foot of the window.
    void say(const QString &sentence) { Q_EMIT said(sentence, false); }
    /// The same, offering undo, of what the sentence tells.
    void sayUndoable(const QString &sentence) { Q_EMIT said(sentence, true); }
    void complain(const QString &sentence) { Q_EMIT complained(sentence); }
    void complain(const std::exception &fault);

    /// Runs `work` on a worker thread, with progress and cancel at the foot of the window. Then
    /// calls `done` on this thread; or `notDone`, if given, when the work failed, which is said, or
    /// was cancelled before anything was kept. Calls neither when `context` is gone by then.
    std::shared_ptr<Progress> runLong(const QString &title, std::function<void(Progress &)> work,
                                      QObject *context, std::function<void()> done,
                                      std::function<void()> notDone = {});
    /// Long work that is still going on.
    std::vector<std::shared_ptr<Progress>> running() const;

    /// Reads the clock again: a new day changes the answer.
    void lookAtClock();

Q_SIGNALS:
    /// After every change, undo and redo; the answer is still the old one.
    void changed(const lastrivet::ChangeNotice &notice);
    void answerChanged();
    void timerChanged();
    void recordWanted(lastrivet::RecordRef record);
    void said(const QString &sentence, bool isUndoable);
    void complained(const QString &sentence);
    void workStarted(const std::shared_ptr<lastrivet::ui::Progress> &progress);
    void workEnded(const std::shared_ptr<lastrivet::ui::Progress> &progress);

private:
    void receive(const ChangeNotice &notice);
    void startAnswer();
    bool report(const Result<ChangeNotice, Refusal> &result, const QString &sentence);
    bool keep(const std::function<void()> &body);
    void tellUnread(const Fault &fault, Telling telling);

    std::unique_ptr<Project> m_project;
    Executor &m_executor;
    Theme &m_theme;
    std::shared_ptr<const Profile> m_profile;
    Snapshot m_records;
    AnswerPointer m_answer;
    Snapshot m_answered;
    /// Of `m_records`; made when first asked for.
    mutable std::optional<entry::PartFinder> m_partFinder;
    std::optional<RunningTimer> m_timer;
    /// As last read or stored; used while the project cannot be read.
    mutable std::optional<TimerProgress> m_timerProgress;
    /// The last attempt to keep something on this computer failed, which was said.
    bool m_isKeepingInVain = false;
    /// The last attempt to read something failed, which was said.
    bool m_isReadingInVain = false;
    std::vector<std::weak_ptr<Progress>> m_running;
    bool m_isAnswering = false;
    /// Since it was said what undo takes back; not running where something was changed since.
    QElapsedTimer m_undoTold;
    int m_subscription = 0;
};

} // namespace lastrivet::ui
