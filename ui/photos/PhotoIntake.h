// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/IntakeStore.h"
#include "core/records/Media.h"

#include <QObject>
#include <QStringList>

#include <vector>

namespace lastrivet::ui {

class Session;

/// Takes files into the project away from the window, with progress and cancel; the records hear of
/// them when all are copied, or of none.
class PhotoIntake final : public QObject {
    Q_OBJECT

public:
    explicit PhotoIntake(Session &session, QObject *parent = nullptr);

    /// Links every file to these records.
    void takeIn(const QStringList &files, const std::vector<Media::Link> &links);

Q_SIGNALS:
    void takenIn(const std::vector<qint64> &media);

private:
    void store(std::vector<evidence::Batch> &batches);
    void tell(const evidence::IntakeReport &report);
    std::vector<evidence::IncomingFile> incoming(const QStringList &files,
                                                 const std::vector<Media::Link> &links) const;

    Session &m_session;
};

} // namespace lastrivet::ui
