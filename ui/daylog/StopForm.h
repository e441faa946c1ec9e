// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/EntryReading.h"
#include "core/entry/TimerProgress.h"

#include <QFrame>

class QLabel;
class QLineEdit;

namespace lastrivet::ui {

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

Q_SIGNALS:
    /// The work is on record and the clock stands still.
    void recorded(qint64 sessionId);
    void left();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    void build();
    void confirm();
    void takeStopTime();
    void explain(const QString &sentence, QLineEdit *field);
    void askAboutSigned();
    entry::EntryReading reading(const RunningTimer &timer) const;

    Session &m_session;
    QLabel *m_words;
    QLineEdit *m_done;
    QLineEdit *m_stopped;
    QLineEdit *m_worked;
    SignedQuestion *m_question;
    QLabel *m_why;
};

} // namespace lastrivet::ui
