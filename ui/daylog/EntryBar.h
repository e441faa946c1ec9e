// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/EntryReading.h"
#include "core/entry/PartFinder.h"
#include "core/project/Project.h"

#include <QTimer>
#include <QWidget>

#include <optional>

class QComboBox;
class QLabel;
class QPushButton;

namespace lastrivet::ui {

class ActLine;
class EntryEdit;
class Session;

/// The line that takes a log entry, what it understood, and the clock that measures work.
class EntryBar final : public QWidget {
    Q_OBJECT

public:
    explicit EntryBar(Session &session, QWidget *parent = nullptr);

    void focusLine();
    void recordsChanged();

Q_SIGNALS:
    void recorded(qint64 sessionId);
    void leftForList();

private:
    void build();
    void understand();
    void askAboutSigned(const entry::EntryReading &reading);
    void enter();
    bool record(entry::EntryReading reading);
    void applyAnswer(entry::EntryReading &reading) const;
    void startOrStop();
    void start();
    void stop();
    bool recordTimed(const QString &text, Minutes minutes);
    void updateTimer();
    entry::EntryReading reading(const QString &text) const;
    QString inWords(const entry::EntryReading &reading) const;
    QString sessionWords(const WorkSession &session) const;

    Session &m_session;
    EntryEdit *m_line;
    QPushButton *m_timerButton;
    QLabel *m_timer;
    QLabel *m_understood;
    QWidget *m_question;
    QLabel *m_questionWords;
    QComboBox *m_changed;
    ActLine *m_ask;
    QTimer m_tick;
    /// Of the snapshot it was made from; made again after a change.
    mutable std::optional<entry::PartFinder> m_finder;
    Id<Step> m_closingStep;
};

} // namespace lastrivet::ui
