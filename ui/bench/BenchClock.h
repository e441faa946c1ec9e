// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/RunningTimer.h"

#include <QTimer>
#include <QWidget>

class QComboBox;
class QLabel;
class QPushButton;

namespace lastrivet::ui {

class ActLine;
class Session;

/// One button that starts and stops work on a part, and how long it has gone on.
class BenchClock final : public QWidget {
    Q_OBJECT

public:
    explicit BenchClock(Session &session, QWidget *parent = nullptr);

    /// The part that work would start on.
    void setPart(Id<Component> part);
    void startOrStop();
    QPushButton &button() const { return *m_button; }

private:
    void build();
    void start();
    void askWhatWasDone();
    bool record(const QString &note, Minutes minutes);
    void askAboutSigned(Id<Component> part);
    void showClock();

    Session &m_session;
    Id<Component> m_part;
    QPushButton *m_button;
    QLabel *m_running;
    QLabel *m_signed;
    QComboBox *m_changed;
    ActLine *m_ask;
    QTimer m_tick;
};

} // namespace lastrivet::ui
