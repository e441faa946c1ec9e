// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointer>
#include <QString>
#include <QTimer>
#include <QWidget>

#include <memory>
#include <optional>
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

    /// Stays for a while. What comes by itself right after a complaint waits for some seconds.
    void say(const QString &sentence, bool isUndoable);
    /// Stays until it is dismissed or something else is said, but until the person has pressed a
    /// key or a button at least some seconds.
    void complain(const QString &sentence);
    /// The person turned to another page: a complaint about what was done on the one before goes,
    /// once it stood for some seconds.
    void turnAway();
    void follow(const std::shared_ptr<Progress> &progress);
    void forget(const std::shared_ptr<Progress> &progress);
    QString text() const;

Q_SIGNALS:
    void undoWanted();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void noteInput(QObject *watched, const QEvent *event);
    /// Says what waited for the complaint.
    void goOn();
    void showSaid(const QString &sentence, bool isUndoable);
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
    /// Runs from a complaint on; what comes by itself meanwhile waits for its end.
    QTimer m_hold;
    /// The person has pressed something since the complaint.
    bool m_hasActed = false;
    /// It goes when it stood for some seconds.
    bool m_isPassing = false;
    struct Waiting {
        QString sentence;
        bool isUndoable;
    };
    std::optional<Waiting> m_waiting;
    /// The key or press that was seen last, to tell another one from it; never looked into.
    const QEvent *m_input = nullptr;
    QPointer<QWidget> m_inputAt;
    QTimer m_poll;
    struct Work {
        std::shared_ptr<Progress> progress;
        qint64 startedAt;
    };
    /// The one that began last is shown, and stopped by the button.
    std::vector<Work> m_works;
};

} // namespace lastrivet::ui
