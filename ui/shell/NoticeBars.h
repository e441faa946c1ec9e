// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"

#include <QFrame>
#include <QPointer>
#include <QTimer>

#include <functional>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace lastrivet::ui {

class Session;

/// Warnings about the project above every page: that it is read-only, stored in an unusual place,
/// damaged, or no longer where it was opened.
class NoticeBars final : public QWidget {
    Q_OBJECT

public:
    /// Looks the database over in the background a moment after.
    explicit NoticeBars(Session &session, QWidget *parent = nullptr);
    ~NoticeBars() override;

    /// Looks whether the folder is where it was opened; also done every few seconds.
    void lookAtPlace();
    /// Looks whether another program has changed the records since this one, which only reads
    /// them, was opened; also done every few seconds.
    void lookAtRecords();
    /// Looks whether the program that kept this one from writing has closed the project; also done
    /// every few seconds.
    void lookAtWriter();
    /// Looks whether the computer's clock can be right; also done every few seconds, since many are
    /// set a while after the start.
    void lookAtClock();
    /// Looks the database over now.
    void lookForDamage();
    /// Asks whether the records of a document that was dropped on the window are to be brought in.
    void askToImport(const QString &file);
    /// Takes away what can be dismissed.
    void dismissAll();
    /// The sentences that are shown, from the top.
    QStringList texts() const;

Q_SIGNALS:
    /// The project is to be opened where it is now.
    void placeWanted();
    /// The project is to be opened once more: it shows the records of when it was.
    void reopeningWanted();
    /// What this second database of the project has is to be brought in.
    void mergeWanted(const QString &file);
    /// Everything is to be looked over.
    void verifyWanted();

private:
    class Bar;

    Bar *add(const QString &text, bool isLoud);
    void addReadOnly();
    /// What can be dismissed; a second database can be merged.
    Bar *addNotice(const Message &notice, const QString &second);
    static void addDismiss(Bar &bar);
    /// At once out of sight; its button may be what waits for something to be chosen.
    void takeAway(QWidget &bar);
    void showDamages(const std::vector<Message> &damages);

    Session &m_session;
    QVBoxLayout *m_bars;
    Bar *m_moved = nullptr;
    /// What is asked about the document that was dropped last; null when nothing is.
    QPointer<QWidget> m_import;
    /// Null while the project can be written.
    Bar *m_readOnly = nullptr;
    /// When the project was opened, and the newest row of its journal then.
    QString m_openedAt;
    std::string m_newestThen;
    bool m_isWriterGone = false;
    /// What stood there before it was told that the writer is gone.
    QString m_readOnlyBefore;
    /// Null while the clock may be right, and after the notice was dismissed.
    QPointer<QWidget> m_clock;
    bool m_isClockWrong = false;
    QTimer m_look;
    std::stop_source m_stop;
};

} // namespace lastrivet::ui
