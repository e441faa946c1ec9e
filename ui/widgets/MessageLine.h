// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTimer>
#include <QWidget>

#include <memory>
#include <vector>

class QLabel;
class QProgressBar;
class QPushButton;

namespace lastrivet::ui {

class Progress;

/// The line at the foot of the window: what just happened, with undo; what is being worked on, with
/// cancel.
class MessageLine final : public QWidget {
    Q_OBJECT

public:
    explicit MessageLine(QWidget *parent = nullptr);

    /// Stays for a while.
    void say(const QString &sentence, bool isUndoable);
    /// Stays until it is dismissed or something else is said.
    void complain(const QString &sentence);
    void follow(const std::shared_ptr<Progress> &progress);
    void forget(const std::shared_ptr<Progress> &progress);
    QString text() const;

Q_SIGNALS:
    void undoWanted();

private:
    void set(const QString &sentence, bool isUndoable, bool isComplaint);
    /// What a worker is at, with a way to stop it.
    void buildWork();
    void clear();
    void updateProgress();

    QLabel *m_mark;
    QLabel *m_sentence;
    QPushButton *m_undo;
    QPushButton *m_dismiss;
    QWidget *m_work;
    QLabel *m_workTitle;
    QProgressBar *m_bar;
    QPushButton *m_cancel;
    QTimer m_fade;
    QTimer m_poll;
    struct Work {
        std::shared_ptr<Progress> progress;
        qint64 startedAt;
    };
    /// The one that began last is shown, and stopped by the button.
    std::vector<Work> m_works;
};

} // namespace lastrivet::ui
