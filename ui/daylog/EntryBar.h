// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/EntryReading.h"
#include "ui/daylog/EntryDoubt.h"
#include "ui/widgets/LineDraft.h"

#include <QWidget>

class QPushButton;

namespace lastrivet::ui {

class EntryEdit;
class Session;
class SignedQuestion;
class TimerBar;
class Understood;

/// The line that takes a log entry, what it understood, and the clock that measures work.
class EntryBar final : public QWidget {
    Q_OBJECT

public:
    explicit EntryBar(Session &session, QWidget *parent = nullptr);
    ~EntryBar() override;

    void focusLine();
    /// The line that is written into.
    QWidget *firstFocus() const;
    void recordsChanged();

Q_SIGNALS:
    void recorded(qint64 sessionId);
    void leftForList();

protected:
    void hideEvent(QHideEvent *event) override;

private:
    void build();
    void understand();
    void enter();
    bool mayBeLogged(const entry::EntryReading &reading);
    void start();
    void updateTimer();
    entry::EntryReading reading() const;

    Session &m_session;
    EntryEdit *m_line;
    QPushButton *m_start;
    Understood *m_understood;
    SignedQuestion *m_question;
    TimerBar *m_timer;
    EntryDoubt m_doubt;
    /// What is typed and not logged is there again when the project is opened again.
    LineDraft m_draft;
};

} // namespace lastrivet::ui
