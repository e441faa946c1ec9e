// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/weighing/LinesModel.h"

#include <algorithm>

namespace lastrivet::ui {

LinesModel::LinesModel(std::vector<LinesColumn> columns, QObject *parent)
    : QAbstractTableModel(parent)
    , m_columns(std::move(columns))
{
}

void LinesModel::setLines(std::vector<QStringList> lines)
{
    // Rows stay where they are, so that the cursor does: what was the empty line becomes the first
    // of the new ones, and the next empty line comes at the end.
    const int before = int(m_lines.size());
    const int now = int(lines.size());
    if (now < before) {
        beginRemoveRows({}, now, before - 1);
        m_lines.resize(std::size_t(now));
        endRemoveRows();
    } else if (now > before) {
        const int end = rowCount();
        beginInsertRows({}, end, end + now - before - 1);
        m_lines.resize(std::size_t(now));
        endInsertRows();
    }
    m_lines = std::move(lines);
    m_handedOut.clear();
    if (rowCount() > 0)
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

void LinesModel::setHeads(const QStringList &heads)
{
    for (std::size_t i = 0; i < m_columns.size(); ++i)
        m_columns[i].head = heads.value(int(i));
    Q_EMIT headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
}

void LinesModel::setEditable(bool isEditable)
{
    if (isEditable == m_isEditable)
        return;
    beginResetModel();
    m_isEditable = isEditable;
    endResetModel();
}

int LinesModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_lines.size()) + (m_isEditable ? 1 : 0);
}

int LinesModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_columns.size());
}

QVariant LinesModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const LinesColumn &column = m_columns[std::size_t(index.column())];
    switch (role) {
    case Qt::EditRole:
        if (const auto typed = m_handedOut.find({index.row(), index.column()});
            typed != m_handedOut.end())
            return typed->second;
        [[fallthrough]];
    case Qt::DisplayRole:
        return std::size_t(index.row()) < m_lines.size()
                   ? m_lines[std::size_t(index.row())].value(index.column())
                   : QString();
    case Qt::TextAlignmentRole:
        return int((column.isNumber ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    default:
        return {};
    }
}

QVariant LinesModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount())
        return {};
    const LinesColumn &column = m_columns[std::size_t(section)];
    if (role == Qt::TextAlignmentRole)
        return int((column.isNumber ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    return role == Qt::DisplayRole ? QVariant(column.head) : QVariant();
}

Qt::ItemFlags LinesModel::flags(const QModelIndex &index) const
{
    const auto flags = QAbstractTableModel::flags(index);
    const bool isOpen =
        m_isEditable && index.isValid() && !m_columns[std::size_t(index.column())].isComputed;
    return isOpen ? flags | Qt::ItemIsEditable : flags;
}

bool LinesModel::setData(const QModelIndex &index, const QVariant &value, int role)
{
    if (!index.isValid() || role != Qt::EditRole)
        return false;
    const QString text = value.toString().trimmed();
    const std::pair cell{index.row(), index.column()};
    m_handedOut.erase(cell);
    if (text == data(index, Qt::DisplayRole).toString())
        return true;
    m_handedOut[cell] = text;
    Q_EMIT typed(cell.first, cell.second, text);
    return true;
}

} // namespace lastrivet::ui
