// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/ArrivingFiles.h"
#include "core/evidence/IntakeStore.h"

#include <QFileSystemWatcher>
#include <QObject>
#include <QString>
#include <QTimer>

#include <chrono>
#include <memory>
#include <vector>

namespace lastrivet::ui {

class RowStore;
class Session;
struct ArrivedFiles;

/// Takes in what arrives in a folder, on its own, while the project is open: the folder that a
/// phone puts its pictures into.
///
/// The choice of folder is this computer's, no record. What is taken in stands in the journal as
/// automatic, which undo passes over.
class WatchedFolder final : public QObject {
    Q_OBJECT

public:
    enum class State { Off, Watching, Paused, NotThere };
    /// What becomes of the files that are there when watching begins.
    enum class Begin { WithWhatIsThere, FromNowOn };
    struct Pace {
        /// How long a file has to stay the same before it counts as whole.
        std::chrono::milliseconds settling{2500};
        /// How often the folder is looked at when nobody says that it changed.
        std::chrono::milliseconds rescan{30000};
    };

    explicit WatchedFolder(Session &session, QObject *parent = nullptr);
    WatchedFolder(Session &session, Pace pace, QObject *parent = nullptr);

    State state() const { return m_state; }
    QString folder() const { return m_folder; }
    /// What was taken in last.
    const std::vector<qint64> &lastTaken() const { return m_lastTaken; }

    void watch(const QString &folder, Begin begin);
    void pause();
    void goOn();
    void stop();
    /// Looks now.
    void look();

Q_SIGNALS:
    void changed();
    void notTakenIn(const QStringList &sentences);

private:
    struct Look;

    void begin();
    void setState(State state);
    void finishLook(const Look &look);
    void watchFolders(const Look &look);
    void copy(std::vector<evidence::SeenFile> files);
    void finishStoring(const evidence::IntakeReport &report, const QString &thrown);
    void settleWithCopied();
    void tell(const evidence::IntakeReport &report);
    void keepMarks();

    Session &m_session;
    const Pace m_pace;
    State m_state = State::Off;
    QString m_folder;
    RowStore *m_rows;
    /// Looked into by a worker while `m_isLooking`, and left alone meanwhile.
    std::shared_ptr<evidence::ArrivingFiles> m_arriving;
    std::vector<evidence::SeenFile> m_copied;
    bool m_isPassingOver = false;
    bool m_isLooking = false;
    bool m_isCopying = false;
    std::vector<qint64> m_lastTaken;
    QFileSystemWatcher m_watcher;
    QTimer m_settle;
    QTimer m_rescan;
};

} // namespace lastrivet::ui
