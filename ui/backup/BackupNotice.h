// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class BackupKeeper;

/// Says on the first page that the records are not kept elsewhere, or not lately; not to be seen
/// while they are.
class BackupNotice final : public QFrame {
    Q_OBJECT

public:
    explicit BackupNotice(BackupKeeper &keeper, QWidget *parent = nullptr);

    void lookAgain();

Q_SIGNALS:
    /// The person wants to choose where backups go, or to make one.
    void wanted();

private:
    BackupKeeper &m_keeper;
    QLabel *m_sentence;
    QPushButton *m_act;
};

} // namespace lastrivet::ui
