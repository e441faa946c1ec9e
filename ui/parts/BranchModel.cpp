// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/BranchModel.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/RecordNames.h"

namespace lastrivet::ui {

BranchModel::BranchModel(Session &session, QObject *parent)
    : QAbstractTableModel(parent)
    , m_session(session)
{
}

void BranchModel::show(acts::BranchCopy copy)
{
    beginResetModel();
    m_copy = std::move(copy);
    endResetModel();
}

int BranchModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_copy.parts.size());
}

int BranchModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(columns);
}

QVariant BranchModel::data(const QModelIndex &index, int role) const
{
    const acts::BranchCopy::Part &part = m_copy.parts[std::size_t(index.row())];
    const bool isShown = role == Qt::DisplayRole || role == Qt::ToolTipRole;
    if (!isShown && role != Qt::EditRole)
        return {};
    switch (index.column()) {
    case NameColumn: {
        constexpr int indent = 3;
        const int depth = isShown ? int(part.depth) * indent : 0;
        return QString(depth, QLatin1Char(' ')) + toQt(part.name);
    }
    case CodeColumn:
        return toQt(part.code);
    default:
        return partName(*m_session.records(), part.original);
    }
}

bool BranchModel::setData(const QModelIndex &index, const QVariant &value, int role)
{
    if (role != Qt::EditRole || index.column() == OriginalColumn)
        return false;
    const std::string text = toStd(value.toString());
    if (index.column() == NameColumn && text.empty())
        return false;
    acts::BranchCopy::Part &part = m_copy.parts[std::size_t(index.row())];
    (index.column() == NameColumn ? part.name : part.code) = text;
    Q_EMIT dataChanged(index, index);
    return true;
}

QVariant BranchModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case NameColumn:
        return tr("Copy");
    case CodeColumn:
        return tr("Code");
    default:
        return tr("Copied from");
    }
}

Qt::ItemFlags BranchModel::flags(const QModelIndex &index) const
{
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    if (index.isValid() && index.column() != OriginalColumn)
        flags |= Qt::ItemIsEditable;
    return index.isValid() ? flags : Qt::NoItemFlags;
}

} // namespace lastrivet::ui
