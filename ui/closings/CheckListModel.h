// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"

#include <QAbstractListModel>

#include <vector>

namespace lastrivet::ui {

/// The inspector's list of one closing: ticked, not ticked, or not applicable.
class CheckListModel final : public QAbstractListModel {
    Q_OBJECT

public:
    using QAbstractListModel::QAbstractListModel;

    void show(Snapshot records, Id<Closing> closing);
    const Check &check(int row) const;
    /// The lines that are neither ticked nor not applicable, but for those at `except`.
    std::vector<Id<Check>> unticked(const std::vector<int> &except = {}) const;
    int tickedCount() const;

    int rowCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    bool setData(const QModelIndex &index, const QVariant &value, int role) override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;

Q_SIGNALS:
    /// The person ticked a line, or took a tick away.
    void tickWanted(lastrivet::Id<lastrivet::Check> check, bool isTicked);

private:
    std::vector<Id<Check>> live() const;

    Snapshot m_records;
    Id<Closing> m_closing;
    std::vector<Id<Check>> m_checks;
};

} // namespace lastrivet::ui
