// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/hours/HoursTableModel.h"

#include "ui/widgets/Density.h"

#include <QFont>
#include <QSize>

#include <algorithm>

namespace lastrivet::ui {

namespace {

/// A longer head makes its column wider than the figures below it.
constexpr qsizetype oneLine = 14;

/// A long head in two lines of about the same length: the names get what its column spares.
QString inTwoLines(const QString &head)
{
    if (head.size() <= oneLine)
        return head;
    const QChar blank = QLatin1Char(' ');
    QString broken = head;
    qsizetype best = -1;
    qsizetype longest = head.size();
    for (qsizetype at = head.indexOf(blank); at >= 0; at = head.indexOf(blank, at + 1)) {
        const qsizetype longer = std::max(at, head.size() - at - 1);
        if (longer >= longest)
            continue;
        longest = longer;
        best = at;
    }
    if (best >= 0)
        broken[best] = QLatin1Char('\n');
    return broken;
}

} // namespace

void HoursTableModel::show(print::FigureTable table)
{
    beginResetModel();
    m_table = std::move(table);
    m_nodes.assign(1, {});
    // The rows that lie around the one that is looked at, outermost first.
    std::vector<std::size_t> around{0};
    for (const auto &row : m_table.rows) {
        around.resize(std::min(around.size(), std::size_t(row.depth) + 1));
        Node &parent = m_nodes[around.back()];
        const std::size_t node = m_nodes.size();
        parent.below.push_back(node);
        m_nodes.push_back({around.back(), int(parent.below.size()) - 1, {}});
        around.push_back(node);
    }
    endResetModel();
}

const print::FigureTable::Row &HoursTableModel::row(const QModelIndex &index) const
{
    return m_table.rows[index.internalId() - 1];
}

QModelIndex HoursTableModel::indexAt(std::size_t node, int column) const
{
    return node == 0 ? QModelIndex() : createIndex(m_nodes[node].row, column, quintptr(node));
}

QModelIndex HoursTableModel::indexOf(RecordRef record) const
{
    for (std::size_t i = 0; i < m_table.rows.size(); ++i) {
        if (m_table.rows[i].record == record)
            return indexAt(i + 1, 0);
    }
    return {};
}

QModelIndex HoursTableModel::index(int row, int column, const QModelIndex &parent) const
{
    if (!hasIndex(row, column, parent))
        return {};
    return indexAt(m_nodes[parent.internalId()].below[std::size_t(row)], column);
}

QModelIndex HoursTableModel::parent(const QModelIndex &index) const
{
    return index.isValid() ? indexAt(m_nodes[index.internalId()].parent, 0) : QModelIndex();
}

int HoursTableModel::rowCount(const QModelIndex &parent) const
{
    return parent.column() > 0 ? 0 : int(m_nodes[parent.internalId()].below.size());
}

int HoursTableModel::columnCount(const QModelIndex &) const
{
    return int(m_table.heads.size());
}

QVariant HoursTableModel::data(const QModelIndex &index, int role) const
{
    const auto &shown = row(index);
    switch (role) {
    case Qt::DisplayRole:
        return shown.cells.value(index.column());
    case Qt::ToolTipRole:
        return index.column() == 0 ? shown.cells.value(0) : QVariant();
    case Qt::TextAlignmentRole:
        return int((index.column() == 0 ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    case Qt::SizeHintRole:
        return index.column() == 0 ? QVariant(QSize(0, rowHeight())) : QVariant();
    case Qt::FontRole:
        if (shown.is_bold) {
            QFont font;
            font.setBold(true);
            return font;
        }
        break;
    default:
        break;
    }
    return {};
}

QVariant HoursTableModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    const QString head = m_table.heads.value(section);
    if (role == Qt::DisplayRole)
        return section == 0 ? head : inTwoLines(head);
    if (role == Qt::AccessibleTextRole)
        return head;
    if (role == Qt::TextAlignmentRole)
        return int((section == 0 ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    return {};
}

} // namespace lastrivet::ui
