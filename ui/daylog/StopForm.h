// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/EntryReading.h"
#include "core/entry/TimerProgress.h"
#include "ui/daylog/EntryDoubt.h"
#include "ui/widgets/RestTimer.h"

#include <QFrame>
#include <QStringList>

#include <optional>

class QFormLayout;
class QLabel;
class QLineEdit;

namespace lastrivet::ui {

class RecordLine;
class Session;
class SignedQuestion;

/// Asks what was done and how long it took when the clock is stopped. Where the clock cannot know,
/// because it ran for hours or the computer slept, the person says when work stopped.
class StopForm final : public QFrame {
    Q_OBJECT

public:
    explicit StopForm(Session &session, QWidget *parent = nullptr);

    /// Asks about the timer that runs.
    void ask();
    /// Gives the keyboard back to the question that is shown.
    void goOn();

Q_SIGNALS:
    /// The work is on record and the clock stands still.
    void recorded(qint64 sessionId);
    void left();

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void hideEvent(QHideEvent *event) override;

private:
    void build();
    /// What is typed stays with the clock, as its note, when the hand rests and when the form goes
    /// without logging it.
    void keepWords();
    /// So do the times that are typed, until somebody keeps the clock running.
    void keepTimes();
    QStringList timesTyped(const RunningTimer &timer) const;
    void takeUpTimes(const RunningTimer &timer, const QStringList &unkept);
    void forgetTimes();
    void leave();
    void connectFields();
    void confirm();
    void logIt();
    /// The clock was started without a part, and is on this one from now on.
    void takePart(qint64 part);
    void takeStopTime();
    void takeTypedTime();
    std::optional<Moment> stopMoment() const;
    /// What the words say by themselves of how long it took.
    std::optional<Minutes> minutesTyped() const;
    void explain(const QString &sentence, QLineEdit *field);
    void askAboutSigned();
    entry::EntryReading reading(const RunningTimer &timer) const;

    Session &m_session;
    QLabel *m_words;
    QFormLayout *m_fields;
    /// Asked for where the clock has no part.
    RecordLine *m_part;
    QLineEdit *m_done;
    QLineEdit *m_stopped;
    QLineEdit *m_worked;
    SignedQuestion *m_question;
    EntryDoubt m_doubt;
    /// Typed times of this clock are kept on this computer.
    bool m_areTimesKept = false;
    /// What was typed last of them could not be kept.
    bool m_isKeptInVain = false;
    /// When the clock began that was asked about last.
    std::optional<Moment> m_asked;
    RestTimer m_soon;
    std::optional<Minutes> m_typed;
    /// How long it took before the words said so.
    QString m_measured;
    QLabel *m_why;
};

} // namespace lastrivet::ui
