// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/IntakeStore.h"
#include "core/records/Media.h"
#include "ui/photos/RowStore.h"

#include <QObject>
#include <QStringList>

#include <vector>

namespace lastrivet::ui {

class Session;

/// Takes files into the project away from the window, with progress and cancel; the records hear of
/// them when all are copied, or of none. What goes wrong with a file is told and keeps no other
/// from being taken in.
class PhotoIntake final : public QObject {
    Q_OBJECT

public:
    explicit PhotoIntake(Session &session, QObject *parent = nullptr);

    /// Links every file to these records; all of them show `shows`. Undo takes them back together,
    /// and with what `begun` names.
    void takeIn(const QStringList &files, const std::vector<Media::Link> &links,
                const WordSet<Shows> &shows = {}, const BegunAct &begun = {});
    /// Stores at once what is copied and waits for its rows; to be called before the page goes.
    void finish();

Q_SIGNALS:
    void takenIn(const std::vector<qint64> &media);
    /// One sentence per file, or per folder that went away, that was not taken in.
    void notTakenIn(const QStringList &sentences);

private:
    void tell(const evidence::IntakeReport &report, const QString &fault);
    void sayTaken(const QString &sentences);
    QString whyNot(int files, const QStringList &troubles) const;
    void makeCopies();

    Session &m_session;
    RowStore *m_rows;
    std::vector<Id<Media>> m_withoutCopies;
    bool m_isMakingCopies = false;
};

/// One sentence per file that was not taken in; those of a folder that is gone share one.
QStringList intakeTroubles(const evidence::IntakeReport &report);

/// What is said of files that were lost or damaged in the project's folder, and are there again.
QStringList putBackWords(const evidence::IntakeReport &report);

} // namespace lastrivet::ui
