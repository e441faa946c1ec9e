// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/EntryReading.h"
#include "core/project/Project.h"
#include "core/records/Squawk.h"

#include <QTimer>
#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;

namespace lastrivet::ui {

class Section;
class Session;

/// The work on one squawk: what is in the log, a line to log more, and the clock to measure it.
class SquawkWork final : public QWidget {
    Q_OBJECT

public:
    explicit SquawkWork(Session &session, QWidget *parent = nullptr);

    void show(Id<Squawk> squawk);
    void refresh();

private:
    void build();
    void connectParts();
    void fillSessions(const Squawk &squawk);
    void updateClock();
    entry::EntryReading reading() const;
    void understand();
    void log();
    void startOrStop();
    void stop();

    Session &m_session;
    Id<Squawk> m_squawk;
    /// What the line is about when the clock was stopped for it; the clock runs on until it is
    /// logged.
    bool m_isOfClock = false;
    Section *m_sessions;
    QLabel *m_sum;
    QLineEdit *m_line;
    QLabel *m_understood;
    QPushButton *m_clock;
    QLabel *m_running;
    QTimer m_tick;
};

} // namespace lastrivet::ui
