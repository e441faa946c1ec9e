// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "core/readiness/Ledger.h"
#include "ui/closings/Mend.h"

#include <QAbstractItemModel>

#include <optional>
#include <vector>

namespace lastrivet::ui {

/// The ledger of one closing: a row per rule, and below it a row per record that does not meet it.
///
/// The internal id of a blocker's row is its rule's row plus one; that of a rule's row is 0.
class LedgerModel final : public QAbstractItemModel {
    Q_OBJECT

public:
    using QAbstractItemModel::QAbstractItemModel;

    /// What the model needs to speak of a closing.
    struct Source {
        Snapshot records;
        const Profile *profile = nullptr;
        readiness::ClosingAnswer answer;
        Moment as_of;
    };
    /// Shows a closing; keeps rows that are the same when it is the one shown already.
    void show(Source source);

    const readiness::LedgerLine &line(const QModelIndex &index) const;
    /// The blocker of a row; null for a rule's row.
    const readiness::Blocker *blocker(const QModelIndex &index) const;
    /// What can be done about the row in place; nothing about what was closed already.
    Mend mend(const QModelIndex &index) const;
    /// What would clear the blocker; of what was closed with gaps, what clears those.
    QString clearedBy(const readiness::Blocker &blocker) const;
    QString sentence(const readiness::Blocker &blocker) const;
    QString source(const readiness::Blocker &blocker) const;

    QModelIndex index(int row, int column, const QModelIndex &parent = {}) const override;
    QModelIndex parent(const QModelIndex &index) const override;
    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;

private:
    void replaceLine(int row, readiness::LedgerLine line);
    /// Both keep the order of the blockers, so that what stays is never told as changed.
    void removeMended(const QModelIndex &at, const std::vector<readiness::Blocker> &now);
    void insertNew(const QModelIndex &at, const std::vector<readiness::Blocker> &now);

    std::optional<Source> m_source;
    std::vector<readiness::LedgerLine> m_lines;
};

} // namespace lastrivet::ui
