// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/backup/Backup.h"
#include "core/backup/BackupChoice.h"

#include <QObject>
#include <QString>
#include <QTimer>

#include <atomic>
#include <memory>
#include <optional>

namespace lastrivet::ui {

class Session;

/// Backs an open project up on the disk that the person chose: when asked, and by itself when that
/// disk is there again and something was changed since the last time.
class BackupKeeper final : public QObject {
    Q_OBJECT

public:
    explicit BackupKeeper(Session &session, QObject *parent = nullptr);

    const Session &session() const { return m_session; }
    /// Nothing when it could not be read, which is said.
    std::optional<backup::BackupChoice> choice() const;
    /// Throws a `Fault` when it cannot be kept; of a project that is only read, that is said.
    void choose(const backup::BackupChoice &choice);
    /// One sentence on the last backup, or that there is none.
    QString lastWords() const;
    /// What the first page has to say; empty while all is well.
    QString reminder() const;
    bool isRunning() const { return *m_isRunning; }
    /// Backs up on a worker, with progress and cancel at the foot of the window.
    void backUp(const QString &shelf, backup::Reading reading);
    /// Learns of a backup that another program made meanwhile, and backs up by itself when that is
    /// due.
    void look();

Q_SIGNALS:
    /// Something else is chosen, or a backup was made.
    void changed();

private:
    QString standingWords() const;
    void takeNote();
    bool isDue(const backup::BackupChoice &choice);
    void lookAt(const backup::BackupChoice &choice);
    void finish(const backup::Report &report, backup::Time now);

    Session &m_session;
    QTimer m_timer;
    std::shared_ptr<std::atomic<bool>> m_isRunning = std::make_shared<std::atomic<bool>>(false);
    /// The day on which this was done by itself since the disk is there, whatever came of it.
    std::optional<Moment> m_tried;
};

} // namespace lastrivet::ui
