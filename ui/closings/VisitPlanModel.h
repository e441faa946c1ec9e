// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "core/readiness/Answer.h"

#include <QAbstractTableModel>

#include <vector>

namespace lastrivet::ui {

/// The closings that one visit could cover, in the order in which they cost the least more work,
/// those that were not begun last; each can be picked.
class VisitPlanModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    using QAbstractTableModel::QAbstractTableModel;

    enum Column { Title, State, Work, Open };

    /// Shows the plan anew; what was picked stays picked while it is in the plan.
    void show(Snapshot records, std::shared_ptr<const readiness::Answer> answer);
    const IdSet<Closing> &picked() const { return m_picked; }
    void pick(const IdSet<Closing> &closings);
    Id<Closing> closing(int row) const { return m_rows[std::size_t(row)].closing; }
    /// The work that must be done before all that are picked can be looked at: up to the last of
    /// them in the plan.
    Minutes workForPicked() const;

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    bool setData(const QModelIndex &index, const QVariant &value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;

Q_SIGNALS:
    void pickedChanged();

private:
    bool isBegun(const readiness::VisitPlanRow &row) const;
    QString words(const readiness::VisitPlanRow &row, int column) const;

    Snapshot m_records;
    std::shared_ptr<const readiness::Answer> m_answer;
    std::vector<readiness::VisitPlanRow> m_rows;
    IdSet<Closing> m_picked;
};

} // namespace lastrivet::ui
