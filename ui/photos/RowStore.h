// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/IntakeStore.h"

#include <QObject>
#include <QString>

#include <cstdint>
#include <deque>
#include <string>
#include <vector>

namespace lastrivet::ui {

class Session;

/// An act of a person that goes on: its newest row of the journal, 0 when it has none, and how undo
/// names it.
struct BegunAct {
    std::int64_t row = 0;
    std::string label{};
};

/// Stores the rows of files that are copied, a few at a time, and lets the window live in between.
///
/// When that fails, the copies without a row are removed: nothing lies in the project that no
/// record knows.
class RowStore final : public QObject {
    Q_OBJECT

public:
    RowStore(Session &session, ChangeKind kind, QObject *parent = nullptr);
    ~RowStore() override;

    /// All of them are one act to undo, or go on with one.
    void add(const std::vector<evidence::Batch> &batches, const BegunAct &begun = {});
    /// Stores at once all that waits.
    void finish();
    /// Undo would take back what was stored last, and with it only the act that it went on with.
    bool isUndoable() const;
    /// How undo names that act; empty where what was stored is an act of its own.
    const std::string &begun() const { return m_begun; }

Q_SIGNALS:
    /// All is stored, or nothing more will be: then `fault` says why.
    void ended(const lastrivet::evidence::IntakeReport &report, const QString &fault);

private:
    struct Waiting {
        evidence::Batch batch;
        BegunAct act;
        /// The act began with the batch before it.
        bool goesOn = false;
    };

    void storeNext();
    evidence::IntakeReport store(const Waiting &next);
    void giveUp(const evidence::Batch &failed);
    void end(const QString &fault);

    Session &m_session;
    const ChangeKind m_kind;
    const std::filesystem::path m_folder;
    std::deque<Waiting> m_waiting;
    /// The newest row of the act that is being stored.
    std::int64_t m_row = 0;
    std::string m_begun;
    evidence::IntakeReport m_report;
    bool m_isStoring = false;
};

} // namespace lastrivet::ui
