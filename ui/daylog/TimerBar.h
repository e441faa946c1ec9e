// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/TimerProgress.h"
#include "ui/widgets/RestTimer.h"

#include <QTimer>
#include <QWidget>

#include <functional>

class QLabel;
class QLineEdit;
class QPushButton;

namespace lastrivet::ui {

class Session;
class StopForm;

/// The clock that measures work, while it runs: how long, at what, a note, pause and stop. Nothing
/// is seen of it while no clock runs.
class TimerBar final : public QWidget {
    Q_OBJECT

public:
    explicit TimerBar(Session &session, QWidget *parent = nullptr);

    /// Asks what was done, as the stop button does; goes on with the question when it is asked
    /// already.
    void stop();
    /// Hides it although the clock runs, where another one is seen.
    void setAway(bool isAway);

Q_SIGNALS:
    void recorded(qint64 sessionId);
    /// The person went on without stopping.
    void left();

private:
    void build();
    void showTimer();
    void tick();
    /// True when it was kept.
    bool change(const std::function<void(TimerProgress &)> &body);
    void noteDown();
    void pauseOrResume();
    QString wordsFor(const RunningTimer &timer, const TimerProgress &progress) const;

    Session &m_session;
    QLabel *m_words;
    QLineEdit *m_note;
    QPushButton *m_leaveOut;
    QPushButton *m_pause;
    QPushButton *m_stop;
    StopForm *m_form;
    QTimer m_tick;
    RestTimer m_soon;
    bool m_isAway = false;
};

} // namespace lastrivet::ui
