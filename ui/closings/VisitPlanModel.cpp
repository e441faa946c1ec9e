// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/VisitPlanModel.h"

#include "ui/convert/QtText.h"
#include "ui/widgets/Density.h"
#include "ui/widgets/Marks.h"

#include <QSize>

#include <algorithm>
#include <array>

namespace lastrivet::ui {

namespace {

/// Column heads, in the order of `Column`.
constexpr std::array heads{
    QT_TRANSLATE_NOOP("lastrivet::ui::VisitPlanModel", "Closing"),
    QT_TRANSLATE_NOOP("lastrivet::ui::VisitPlanModel", "Stands"),
    QT_TRANSLATE_NOOP("lastrivet::ui::VisitPlanModel", "Work until then, in all"),
    QT_TRANSLATE_NOOP("lastrivet::ui::VisitPlanModel", "And besides"),
};

} // namespace

void VisitPlanModel::show(Snapshot records, std::shared_ptr<const readiness::Answer> answer)
{
    beginResetModel();
    m_records = std::move(records);
    m_answer = std::move(answer);
    m_rows.clear();
    // An answer of an older snapshot may name closings that are gone by now.
    for (const auto &row : m_answer->visit_plan) {
        if (m_records->findLive(row.closing))
            m_rows.push_back(row);
    }
    // An inspector has nothing to look at where no work is on record yet.
    std::ranges::stable_partition(
        m_rows, [this](const readiness::VisitPlanRow &row) { return isBegun(row); });
    std::erase_if(m_picked, [this](Id<Closing> id) {
        return std::ranges::none_of(
            m_rows, [id](const readiness::VisitPlanRow &row) { return row.closing == id; });
    });
    endResetModel();
}

bool VisitPlanModel::isBegun(const readiness::VisitPlanRow &row) const
{
    return m_answer->closing(row.closing)->begun;
}

void VisitPlanModel::pick(const IdSet<Closing> &closings)
{
    m_picked.clear();
    for (const auto &row : m_rows) {
        if (std::ranges::binary_search(closings, row.closing))
            m_picked.insert(std::ranges::lower_bound(m_picked, row.closing), row.closing);
    }
    if (!m_rows.empty())
        Q_EMIT dataChanged(index(0, Title), index(rowCount() - 1, Title), {Qt::CheckStateRole});
    Q_EMIT pickedChanged();
}

Minutes VisitPlanModel::workForPicked() const
{
    Minutes most{0};
    for (const auto &row : m_rows) {
        if (std::ranges::binary_search(m_picked, row.closing))
            most = std::max(most, row.cumulative_minutes);
    }
    return most;
}

int VisitPlanModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

int VisitPlanModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(heads.size());
}

QString VisitPlanModel::words(const readiness::VisitPlanRow &row, int column) const
{
    switch (column) {
    case Title:
        return toQt(m_records->find(row.closing)->title);
    case State:
        return stateWords(m_answer->closing(row.closing)->state, isBegun(row));
    case Work:
        // No work on record to count yet is not the same as none left to do.
        if (row.cumulative_minutes.count() == 0 && !isBegun(row))
            return {};
        return row.cumulative_minutes.count() == 0 ? tr("none") : hoursText(row.cumulative_minutes);
    default:
        break;
    }
    QStringList open;
    if (row.unknown_estimates > 0)
        open << tr("%n without an estimate", nullptr, int(row.unknown_estimates));
    if (row.other_blockers > 0)
        open << tr("%n other things in the way", nullptr, int(row.other_blockers));
    return open.join(QStringLiteral(", "));
}

QVariant VisitPlanModel::data(const QModelIndex &index, int role) const
{
    const auto &row = m_rows[std::size_t(index.row())];
    if (role == Qt::DisplayRole || role == Qt::ToolTipRole)
        return words(row, index.column());
    if (role == Qt::CheckStateRole && index.column() == Title)
        return std::ranges::binary_search(m_picked, row.closing) ? Qt::Checked : Qt::Unchecked;
    if (role == Qt::SizeHintRole && index.column() == Title)
        return QSize(0, rowHeight());
    if (role == Qt::TextAlignmentRole && index.column() == Work)
        return int(Qt::AlignRight | Qt::AlignVCenter);
    return {};
}

bool VisitPlanModel::setData(const QModelIndex &index, const QVariant &value, int role)
{
    if (role != Qt::CheckStateRole || index.column() != Title)
        return false;
    const auto id = closing(index.row());
    std::erase(m_picked, id);
    if (value.toInt() == Qt::Checked)
        m_picked.insert(std::ranges::lower_bound(m_picked, id), id);
    Q_EMIT dataChanged(index, index, {Qt::CheckStateRole});
    Q_EMIT pickedChanged();
    return true;
}

QVariant VisitPlanModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation == Qt::Horizontal && role == Qt::TextAlignmentRole)
        return int((section == Work ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    return tr(heads[std::size_t(section)]);
}

Qt::ItemFlags VisitPlanModel::flags(const QModelIndex &index) const
{
    const auto flags = QAbstractTableModel::flags(index);
    return index.column() == Title ? flags | Qt::ItemIsUserCheckable : flags;
}

} // namespace lastrivet::ui
