// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/RunningTimer.h"

#include <QTimer>
#include <QWidget>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class Session;
class StopForm;

/// One button that starts and stops work on a part, and how long it has gone on.
class BenchClock final : public QWidget {
    Q_OBJECT

public:
    explicit BenchClock(Session &session, QWidget *parent = nullptr);

    /// The part that work would start on.
    void setPart(Id<Component> part);
    void startOrStop();
    QPushButton &button() const { return *m_button; }

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void build();
    void start();
    void showClock();

    Session &m_session;
    Id<Component> m_part;
    QPushButton *m_button;
    QLabel *m_running;
    StopForm *m_form;
    QTimer m_tick;
};

} // namespace lastrivet::ui
