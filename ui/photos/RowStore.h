// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/IntakeStore.h"

#include <QObject>
#include <QString>

#include <deque>
#include <vector>

namespace lastrivet::ui {

class Session;

/// Stores the rows of files that are copied, a few at a time, and lets the window live in between.
///
/// When that fails, the copies without a row are removed: nothing lies in the project that no
/// record knows.
class RowStore final : public QObject {
    Q_OBJECT

public:
    RowStore(Session &session, ChangeKind kind, QObject *parent = nullptr);
    ~RowStore() override;

    void add(const std::vector<evidence::Batch> &batches);
    /// Stores at once all that waits.
    void finish();

Q_SIGNALS:
    /// All is stored, or nothing more will be: then `fault` says why.
    void ended(const lastrivet::evidence::IntakeReport &report, const QString &fault);

private:
    void storeNext();
    void giveUp(const evidence::Batch &failed);
    void end(const QString &fault);

    Session &m_session;
    const ChangeKind m_kind;
    const std::filesystem::path m_folder;
    std::deque<evidence::Batch> m_waiting;
    evidence::IntakeReport m_report;
    bool m_isStoring = false;
};

} // namespace lastrivet::ui
