// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

#include <vector>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class Session;
class WatchedFolder;

/// The line about the watched folder: choosing it, what came from it last, pausing and stopping.
class WatchBar final : public QFrame {
    Q_OBJECT

public:
    explicit WatchBar(Session &session, QWidget *parent = nullptr);

    /// `folder` outlives the bar.
    void setFolder(WatchedFolder &folder);
    /// The button that chooses a folder while none is watched; stands elsewhere.
    QPushButton *beginning() const { return m_begin; }
    /// Asks what is to become of the files that lie in this folder already.
    void propose(const QString &folder);

Q_SIGNALS:
    /// These came last and are to be shown.
    void shown(const std::vector<qint64> &media);
    /// These came last and do not belong here.
    void unwanted(const std::vector<qint64> &media);

private:
    void build();
    void connectButtons();
    QPushButton *addButton(const QString &words);
    void chooseFolder();
    void update();
    QString words() const;

    Session &m_session;
    WatchedFolder *m_folder = nullptr;
    QString m_proposed;
    QLabel *m_words;
    QPushButton *m_begin;
    QPushButton *m_choose;
    QPushButton *m_withAll;
    QPushButton *m_fromNow;
    QPushButton *m_show;
    QPushButton *m_unwanted;
    QPushButton *m_pause;
    QPushButton *m_stop;
};

} // namespace lastrivet::ui
