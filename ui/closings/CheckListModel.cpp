// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/CheckListModel.h"

#include "ui/convert/QtText.h"

#include <algorithm>

namespace lastrivet::ui {

void CheckListModel::show(Snapshot records, Id<Closing> closing)
{
    const Snapshot before = std::exchange(m_records, std::move(records));
    const bool isOther = std::exchange(m_closing, closing) != closing;
    auto now = live();
    if (isOther || now != m_checks) {
        beginResetModel();
        m_checks = std::move(now);
        endResetModel();
        return;
    }
    for (int row = 0; row < int(m_checks.size()); ++row) {
        const Check *old = before->find(m_checks[std::size_t(row)]);
        if (!old || *old != check(row))
            Q_EMIT dataChanged(index(row), index(row));
    }
}

std::vector<Id<Check>> CheckListModel::live() const
{
    std::vector<Id<Check>> found;
    for (const Check &check : m_records->checks) {
        if (check.closing_id == m_closing && !check.withdrawn_on)
            found.push_back(check.id);
    }
    return found;
}

const Check &CheckListModel::check(int row) const
{
    return *m_records->find(m_checks[std::size_t(row)]);
}

std::vector<Id<Check>> CheckListModel::unticked(const std::vector<int> &except) const
{
    std::vector<Id<Check>> found;
    for (int row = 0; row < rowCount(); ++row) {
        const Check &line = check(row);
        if (!line.done_on && !line.not_applicable && std::ranges::find(except, row) == except.end())
            found.push_back(line.id);
    }
    return found;
}

int CheckListModel::tickedCount() const
{
    return int(std::ranges::count_if(m_checks, [this](Id<Check> id) {
        const Check *check = m_records->find(id);
        return check->done_on || check->not_applicable;
    }));
}

int CheckListModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_checks.size());
}

QVariant CheckListModel::data(const QModelIndex &index, int role) const
{
    const Check &line = check(index.row());
    if (role == Qt::DisplayRole)
        return line.not_applicable ? tr("%1 (not applicable)").arg(listLine(line.item))
                                   : listLine(line.item);
    if (role == Qt::CheckStateRole)
        return line.done_on ? Qt::Checked : Qt::Unchecked;
    if (role == Qt::ToolTipRole)
        return line.done_on ? tr("ticked on %1").arg(dateText(*line.done_on))
                            : sourceWords(line.source);
    return {};
}

bool CheckListModel::setData(const QModelIndex &index, const QVariant &value, int role)
{
    if (role != Qt::CheckStateRole)
        return false;
    Q_EMIT tickWanted(check(index.row()).id, value.toInt() == Qt::Checked);
    return true;
}

Qt::ItemFlags CheckListModel::flags(const QModelIndex &index) const
{
    const Qt::ItemFlags flags = QAbstractListModel::flags(index);
    return index.isValid() ? flags | Qt::ItemIsUserCheckable : flags;
}

} // namespace lastrivet::ui
