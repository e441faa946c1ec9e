// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/EntryReading.h"
#include "core/project/Project.h"
#include "core/records/Squawk.h"
#include "ui/daylog/EntryDoubt.h"
#include "ui/shell/Drafts.h"
#include "ui/widgets/LineDraft.h"

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

protected:
    void hideEvent(QHideEvent *event) override;

private:
    void build();
    void connectParts();
    void fillSessions(const Squawk &squawk);
    void updateClock();
    entry::EntryReading reading() const;
    void understand();
    bool mayBeLogged(const entry::EntryReading &reading);
    void log();
    void keepDraft();
    /// Empty while no clock runs.
    QString clockText() const;
    void startOrStop();
    void stop();
    /// True when the line is about what the clock measured: logging it stops the clock.
    bool isOfClock() const;

    Session &m_session;
    Id<Squawk> m_squawk;
    /// The squawk whose clock was stopped with its time put into the line; the clock itself runs on
    /// until that is logged.
    Id<Squawk> m_stopped;
    /// When that clock had begun, kept so that its time is not counted twice after a restart.
    Drafts m_stops;
    EntryDoubt m_doubt;
    Section *m_sessions;
    QLabel *m_sum;
    QLineEdit *m_line;
    /// What is typed and not logged, of each squawk.
    LineDraft m_draft;
    QLabel *m_understood;
    QPushButton *m_clock;
    QLabel *m_running;
    QTimer m_tick;
};

} // namespace lastrivet::ui
